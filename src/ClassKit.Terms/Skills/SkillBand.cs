using MathNet.Numerics.Distributions;

namespace ClassKit.Terms.Skills;

/// <summary>
/// How sure it is what somebody can do: of ten such bands about eight hold the share of answers that they would get right.
/// </summary>
/// <param name="Low">The lower end, 0 to 1: the first tenth of the beta distribution.</param>
/// <param name="Middle">Its median.</param>
/// <param name="High">The upper end: its last tenth.</param>
/// <param name="Answers">How many answers it rests on, old ones counted for less.</param>
public sealed record SkillBand(double Low, double Middle, double High, double Answers)
{
    private const double Tail = 0.1;

    /// <summary>Before anything is known every share is as likely as any other (Bayes 1763, Laplace).</summary>
    private const double Before = 1;

    /// <summary>The band of answers, each with what it counts.</summary>
    /// <param name="shown">What those that showed the method count together, 0 or more.</param>
    /// <param name="missed">What the others count together, 0 or more.</param>
    public static SkillBand Of(double shown, double missed)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(shown);
        ArgumentOutOfRangeException.ThrowIfNegative(missed);
        var (a, b) = (Before + shown, Before + missed);
        return new(Beta.InvCDF(a, b, Tail), Beta.InvCDF(a, b, 0.5), Beta.InvCDF(a, b, 1 - Tail), shown + missed);
    }
}
