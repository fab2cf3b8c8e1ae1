using MathNet.Numerics.Distributions;

namespace ClassKit.Grading.Statistics;

/// <summary>How consistently a set of items ranks a group of students.</summary>
/// <param name="Alpha">
/// Cronbach's alpha (Psychometrika 16, 1951, 297), at most 1; for items marked right or wrong it is Kuder and Richardson's formula 20. It
/// can be negative, which says that the items do not measure one thing.
/// </param>
/// <param name="Low">The lower end of its 95 % interval after Feldt (Psychometrika 30, 1965, 357).</param>
/// <param name="High">The upper end.</param>
/// <param name="StandardError">The standard error of measurement of a student's total, in points: the standard deviation of totals times
/// the root of 1 - alpha.</param>
public sealed record Reliability(double Alpha, double Low, double High, double StandardError)
{
    private const double Tail = 0.025;

    /// <summary>Computes it.</summary>
    /// <returns>Null with fewer than two items or students, or where no student's total differs: then it is undefined, not 0.</returns>
    public static Reliability? Of(ScoreTable table)
    {
        ArgumentNullException.ThrowIfNull(table);
        if (AlphaOf(table) is not { } alpha)
            return null;
        double among = table.Students - 1;
        var within = among * (table.Items - 1);
        double End(double probability) => 1 - ((1 - alpha) * FisherSnedecor.InvCDF(among, within, probability));
        return new(alpha, End(1 - Tail), End(Tail), Math.Sqrt(Moments.Variance(table.Totals)!.Value * (1 - alpha)));
    }

    /// <summary>Alpha from variances.</summary>
    /// <param name="items">How many items, at least 2.</param>
    /// <param name="itemVariances">The items' variances together.</param>
    /// <param name="totalVariance">The variance of totals, with the same divisor as the items'; above 0.</param>
    public static double AlphaFrom(int items, double itemVariances, double totalVariance) =>
        items / (items - 1.0) * (1 - (itemVariances / totalVariance));

    /// <summary>Alpha of a table; null where undefined.</summary>
    internal static double? AlphaOf(ScoreTable table)
    {
        if (table.Items < 2 || Moments.Variance(table.Totals) is not { } total || total == 0)
            return null;
        return AlphaFrom(table.Items, Enumerable.Range(0, table.Items).Sum(item => Moments.Variance(table.Item(item))!.Value), total);
    }
}
