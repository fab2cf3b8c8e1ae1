using MathNet.Numerics.Distributions;

namespace ClassKit.Lessons.Measured;

/// <summary>How much one thing was above another in the same teams, with the 95 % interval of Student's paired t (Student 1908).</summary>
/// <param name="Pairs">How many teams measured both.</param>
/// <param name="Mean">The mean difference.</param>
/// <param name="Interval">Its ends; null below two pairs.</param>
public sealed record PairedDifference(int Pairs, double Mean, (double Low, double High)? Interval)
{
    private const double Upper = 0.975;

    /// <summary>True if the interval holds 0, so that the teams could as well have measured no difference.</summary>
    public bool MayBeNone => Interval is not { } ends || (ends.Low <= 0 && ends.High >= 0);

    /// <summary>From the differences, one a pair; null without any.</summary>
    public static PairedDifference? Of(IReadOnlyList<double> differences)
    {
        ArgumentNullException.ThrowIfNull(differences);
        if (differences.Count == 0)
            return null;
        var mean = differences.Average();
        if (differences.Count == 1)
            return new(1, mean, null);
        var variance = differences.Sum(difference => (difference - mean) * (difference - mean)) / (differences.Count - 1);
        var half = StudentT.InvCDF(0, 1, differences.Count - 1, Upper) * Math.Sqrt(variance / differences.Count);
        return new(differences.Count, mean, (mean - half, mean + half));
    }
}
