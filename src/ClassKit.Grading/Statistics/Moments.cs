namespace ClassKit.Grading;

/// <summary>Variance and correlation, undefined where nothing varies.</summary>
internal static class Moments
{
    /// <summary>The variance with divisor n - 1; null for fewer than two values.</summary>
    public static double? Variance(IReadOnlyList<double> values) =>
        values.Count < 2 ? null : Products(values, values) / (values.Count - 1);

    /// <summary>Pearson's correlation, -1 to 1; null where one side does not vary.</summary>
    public static double? Correlation(IReadOnlyList<double> left, IReadOnlyList<double> right)
    {
        if (!Varies(left) || !Varies(right)) return null;
        return Products(left, right) / Math.Sqrt(Products(left, left) * Products(right, right));
    }

    private static bool Varies(IReadOnlyList<double> values) => values.Any(value => value != values[0]);

    private static double Products(IReadOnlyList<double> left, IReadOnlyList<double> right)
    {
        var (leftMean, rightMean) = (left.Average(), right.Average());
        return left.Zip(right, (one, other) => (one - leftMean) * (other - rightMean)).Sum();
    }
}
