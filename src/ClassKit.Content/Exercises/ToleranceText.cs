using ClassKit.Content.Diagnostics;
using ClassKit.Content.Quantities;
using ClassKit.Content.Sources;
using ClassKit.Exercises;

namespace ClassKit.Content.Exercises;

/// <summary>Reads <c>1 g</c>, in the answer's own unit, or <c>0.5 % of the answer</c>.</summary>
internal static class ToleranceText
{
    private const string OfTheAnswer = "% of the answer";

    /// <summary>A wider one would let almost anything pass.</summary>
    private static readonly Bounds Relative = new(0, true, 50);

    public static Tolerance? Read(Located text, string unit, ProblemList problems)
    {
        if (text.Text.EndsWith(OfTheAnswer, StringComparison.OrdinalIgnoreCase))
            return Amount(text, OfTheAnswer.Length, Relative, problems) is { } percent ? Tolerance.Relative(percent / 100) : null;
        if (unit.Length > 0 && text.Text.EndsWith(unit, StringComparison.Ordinal))
            return Amount(text, unit.Length, Bounds.ZeroOrMore, problems) is { } amount ? Tolerance.Absolute(AnswerUnit.IsPercent(unit) ? amount / 100 : amount) : null;
        problems.Add(text.Line, $"The tolerance is `{text.Text}`", $"Write it in the unit of the answer, such as `1 {unit}`, or as a share, such as `0.5 {OfTheAnswer}`.");
        return null;
    }

    private static double? Amount(Located text, int unitLength, Bounds bounds, ProblemList problems) =>
        Number.Read(new(text.Text[..^unitLength].Trim(), text.Line), "The tolerance", bounds, problems);
}
