namespace ClassKit.Lessons.Measured;

/// <summary>Tells measurements that lie far from all others, to be asked about and never left out by us.</summary>
/// <remarks>
/// The modified z-score of Iglewicz and Hoaglin, How to Detect and Handle Outliers (ASQC 1993), as in the NIST/SEMATECH e-Handbook of
/// Statistical Methods, 1.3.5.17: 0.6745 × (x − median) / MAD above 3.5 either way. A few wrong numbers move neither median nor MAD.
/// </remarks>
public static class FarFromTheRest
{
    private const double Limit = 3.5;
    private const double NormalQuartile = 0.6745;

    /// <summary>Below these one cannot say what all others are. Common practice, no source.</summary>
    private const int Fewest = 5;

    /// <summary>For each value whether it lies far from the rest; none where there are too few.</summary>
    /// <param name="values">In any order.</param>
    /// <param name="step">What the instrument can tell apart: where most read the same, half of it stands for their spread.</param>
    public static IReadOnlyList<bool> In(IReadOnlyList<double> values, double step)
    {
        ArgumentNullException.ThrowIfNull(values);
        if (values.Count < Fewest)
            return [.. values.Select(_ => false)];
        var median = Median(values);
        var spread = Math.Max(Median([.. values.Select(value => Math.Abs(value - median))]), step / 2);
        return [.. values.Select(value => Math.Abs(NormalQuartile * (value - median) / spread) > Limit)];
    }

    internal static double Median(IReadOnlyList<double> values)
    {
        var sorted = values.Order().ToList();
        var middle = sorted.Count / 2;
        return sorted.Count % 2 == 1 ? sorted[middle] : (sorted[middle - 1] + sorted[middle]) / 2;
    }
}
