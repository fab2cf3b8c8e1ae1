namespace ClassKit.Pages.Charts;

/// <summary>Round values along an axis.</summary>
internal static class AxisTicks
{
    /// <summary>
    /// 0 and the multiples of 1, 2 or 5 times a power of ten up to <paramref name="largest"/>, at most about as many as wanted.
    /// </summary>
    /// <param name="largest">Above 0.</param>
    /// <param name="wanted">At least 1.</param>
    public static IReadOnlyList<double> For(double largest, int wanted)
    {
        var step = Step(largest / wanted);
        return Multiples(0, Math.Floor(largest / step + 1e-9), step);
    }

    /// <summary>Such multiples from at or below the one to at or above the other; two at least.</summary>
    /// <param name="low">Where something is drawn first.</param>
    /// <param name="high">Where last: at or above <paramref name="low"/>.</param>
    /// <param name="wanted">At least 1.</param>
    /// <param name="finest">The least distance between two, above 0: what is read off is no finer.</param>
    public static IReadOnlyList<double> Around(double low, double high, int wanted, double finest)
    {
        var step = Step(Math.Max((high - low) / wanted, finest));
        var first = Math.Floor(low / step + 1e-9);
        return Multiples(first, Math.Max(Math.Ceiling(high / step - 1e-9), first + 1), step);
    }

    private static double Step(double rough)
    {
        var power = Math.Pow(10, Math.Floor(Math.Log10(rough)));
        return new[] { 1, 2, 5, 10 }.Select(factor => factor * power).First(candidate => candidate >= rough * 0.999);
    }

    private static IReadOnlyList<double> Multiples(double first, double last, double step) =>
        [
            .. Enumerable
                .Range(0, (int)(last - first) + 1)
                .Select(index => Math.Round((first + index) * step, 9, MidpointRounding.AwayFromZero)),
        ];
}
