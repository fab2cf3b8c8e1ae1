namespace ClassKit.Lessons.Sensory;

/// <summary>
/// Orders in which several samples are served, so that over all tasters no sample gains by its place or by the one before it.
/// </summary>
/// <remarks>
/// E. J. Williams, "Experimental designs balanced for the estimation of residual effects of treatments", Aust. J. Sci. Res. A 2 (1949)
/// 149–168: over a whole block every sample stands in every place equally often, and follows every other equally often.
/// </remarks>
public static class ServingOrders
{
    /// <summary>One block of orders: as many as there are samples where their number is even, else twice as many.</summary>
    /// <param name="samples">How many; 0 or more.</param>
    /// <returns>Each order names the samples by their index from 0.</returns>
    public static IReadOnlyList<IReadOnlyList<int>> Block(int samples)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(samples);
        if (samples < 2)
            return
            [
                [.. Enumerable.Range(0, samples)],
            ];
        // 0, 1, n-1, 2, n-2, …: neighbours differ by every step once.
        List<int> first =
        [
            .. Enumerable.Range(0, samples).Select(place => place % 2 == 1 ? (place + 1) / 2 : (samples - place / 2) % samples),
        ];
        List<IReadOnlyList<int>> rows =
        [
            .. Enumerable.Range(0, samples).Select(shift => (IReadOnlyList<int>)[.. first.Select(sample => (sample + shift) % samples)]),
        ];
        return samples % 2 == 0 ? rows : [.. rows, .. rows.Select(row => (IReadOnlyList<int>)[.. row.Reverse()])];
    }
}
