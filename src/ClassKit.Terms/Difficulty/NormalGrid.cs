namespace ClassKit.Terms.Difficulty;

/// <summary>
/// A normal distribution in points: of even steps as wide as here, sums of smooth functions equal integrals to more digits than anybody
/// reads.
/// </summary>
internal static class NormalGrid
{
    private const double Widest = 6;
    private const int Half = 30;

    /// <summary>Places in standard deviations from the mean, with weights that sum to 1.</summary>
    public static IReadOnlyList<(double At, double Weight)> Points { get; } = Made();

    private static List<(double At, double Weight)> Made()
    {
        var points = Enumerable
            .Range(-Half, (2 * Half) + 1)
            .Select(step => step * Widest / Half)
            .Select(at => (At: at, Weight: Math.Exp(-at * at / 2)))
            .ToList();
        var all = points.Sum(point => point.Weight);
        return [.. points.Select(point => (point.At, point.Weight / all))];
    }
}
