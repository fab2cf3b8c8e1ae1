namespace ClassKit.Pages.Charts;

/// <summary>Round values along an axis that starts at 0.</summary>
internal static class AxisTicks
{
    /// <summary>0 and the multiples of 1, 2 or 5 times a power of ten up to <paramref name="largest"/>, at most about as many as wanted.</summary>
    /// <param name="largest">Above 0.</param>
    /// <param name="wanted">At least 1.</param>
    public static IReadOnlyList<double> For(double largest, int wanted)
    {
        var rough = largest / wanted;
        var power = Math.Pow(10, Math.Floor(Math.Log10(rough)));
        var step = new[] { 1, 2, 5, 10 }.Select(factor => factor * power).First(candidate => candidate >= rough * 0.999);
        return [.. Enumerable.Range(0, (int)Math.Floor(largest / step + 1e-9) + 1).Select(index => Math.Round(index * step, 9, MidpointRounding.AwayFromZero))];
    }
}
