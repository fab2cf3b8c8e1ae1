using MathNet.Numerics.Distributions;

namespace ClassKit.Lessons.Measured;

/// <summary>
/// How much one thing was above another in different teams, with the 95 % interval of Welch's t (B. L. Welch, Biometrika 34 (1947) 28–35):
/// the two may scatter differently.
/// </summary>
/// <param name="Teams">How many teams measured the one.</param>
/// <param name="Others">How many measured the other.</param>
/// <param name="Mean">The one's mean less the other's.</param>
/// <param name="Interval">Its ends; null where either has fewer than two teams.</param>
public sealed record UnpairedDifference(int Teams, int Others, double Mean, (double Low, double High)? Interval)
{
    private const double Upper = 0.975;

    /// <summary>True if the interval holds 0, so that the teams could as well have measured no difference.</summary>
    public bool MayBeNone => Interval is not { } ends || (ends.Low <= 0 && ends.High >= 0);

    /// <summary>From one value a team; null where either has none.</summary>
    public static UnpairedDifference? Of(IReadOnlyCollection<double> one, IReadOnlyCollection<double> other)
    {
        ArgumentNullException.ThrowIfNull(one);
        ArgumentNullException.ThrowIfNull(other);
        if (one.Count == 0 || other.Count == 0)
            return null;
        var mean = one.Average() - other.Average();
        if (one.Count < 2 || other.Count < 2)
            return new(one.Count, other.Count, mean, null);
        var (first, second) = (OfTheMean(one), OfTheMean(other));
        var variance = first + second;
        if (variance == 0)
            return new(one.Count, other.Count, mean, (mean, mean));
        var freedom = variance * variance / ((first * first / (one.Count - 1)) + (second * second / (other.Count - 1)));
        var half = StudentT.InvCDF(0, 1, freedom, Upper) * Math.Sqrt(variance);
        return new(one.Count, other.Count, mean, (mean - half, mean + half));
    }

    private static double OfTheMean(IReadOnlyCollection<double> values)
    {
        var mean = values.Average();
        return values.Sum(value => (value - mean) * (value - mean)) / (values.Count - 1) / values.Count;
    }
}
