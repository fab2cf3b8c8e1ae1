using ClassKit.Exercises.Authoring;
using ClassKit.Grading.Numbers;

namespace ClassKit.Grading.Judging.Trials;

/// <summary>How far off an answer may be that follows from the student's own earlier answers.</summary>
/// <remarks>
/// A part's tolerance is made for right answers. Where an earlier slip makes the answer a hundredth of that, 0.05 of a cup would allow
/// everything, and any formula over the slip would pass for the method: so it shrinks with the answer, once it is more than a twentieth of
/// it.
/// </remarks>
internal static class OwnAllowance
{
    /// <summary>Of the answer. A judgement call: no shipped part allows more of its right answer.</summary>
    private const double Small = 0.05;

    /// <summary>Nothing is compared more sharply than this.</summary>
    private const double Least = 1e-9;

    /// <summary>The share of a part's tolerance that an answer is allowed; 1 where the answer is as large as the right one.</summary>
    /// <param name="tolerance">The part's.</param>
    /// <param name="own">What the key makes of the student's own earlier answers.</param>
    /// <param name="right">What it makes of right ones.</param>
    public static double Share(Tolerance tolerance, double? own, double right)
    {
        if (own is not { } expected || tolerance.IsRelative || tolerance.Amount <= 0 || right == 0)
            return 1;
        var inProportion = Math.Abs(expected / right);
        var asItIsSmall = Small * Math.Abs(expected) / tolerance.Amount;
        return Math.Clamp(Math.Max(inProportion, asItIsSmall), Least, 1);
    }

    /// <summary>
    /// True if a value follows from own earlier answers: within what is allowed, or for a typed number as far as it is written out.
    /// </summary>
    public static bool Accepts(Tolerance tolerance, double? own, double right, double value, bool isTyped) =>
        own is { } expected
        && (
            tolerance.Shrunk(Share(tolerance, expected, right)).Accepts(expected, value)
            || (isTyped && tolerance.Accepts(expected, value) && Math.Abs(expected - value) <= TypedDigits.HalfOfLast(value))
        );
}
