namespace ClassKit.Grading.Statistics;

/// <summary>Variance and correlation, undefined where nothing varies.</summary>
/// <remarks>
/// Points are exact, so that whether they vary is no matter of rounding noise: nothing here divides by a variance that is only noise.
/// </remarks>
internal static class Moments
{
    /// <summary>The variance with divisor n - 1; exactly 0 where all values are equal; null for fewer than two values.</summary>
    public static double? Variance(IReadOnlyList<decimal> values) =>
        values.Count < 2 ? null
        : Varies(values) ? Products(values, values) / (values.Count - 1)
        : 0;

    /// <summary>Pearson's correlation, -1 to 1; null where one side does not vary.</summary>
    public static double? Correlation(IReadOnlyList<decimal> left, IReadOnlyList<decimal> right)
    {
        if (!Varies(left) || !Varies(right))
            return null;
        return Products(left, right) / Math.Sqrt(Products(left, left) * Products(right, right));
    }

    private static bool Varies(IReadOnlyList<decimal> values) => values.Any(value => value != values[0]);

    private static double Products(IReadOnlyList<decimal> left, IReadOnlyList<decimal> right)
    {
        var (leftMean, rightMean) = (left.Average(), right.Average());
        return left.Zip(right, (one, other) => (double)(one - leftMean) * (double)(other - rightMean)).Sum();
    }
}
