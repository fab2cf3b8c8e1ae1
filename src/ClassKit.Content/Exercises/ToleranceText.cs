using System.Text.RegularExpressions;
using ClassKit.Content.Diagnostics;
using ClassKit.Content.Quantities;
using ClassKit.Content.Sources;
using ClassKit.Exercises.Authoring;

namespace ClassKit.Content.Exercises;

/// <summary>Reads <c>1 g</c>, in the answer's own unit, or <c>0.5 % of the answer</c>; for a rounding <c>1 g</c> only.</summary>
internal static partial class ToleranceText
{
    private const string OfTheAnswer = "% of the answer";

    /// <summary>A wider one would let almost anything pass.</summary>
    private static readonly Bounds Relative = new(0, true, 50);

    public static Tolerance? Read(Located text, Unit unit, ProblemList problems)
    {
        var match = NumberAndUnit().Match(text.Text);
        var number = new Located(match.Groups["number"].Value, text.Line);
        if (match.Groups["unit"].Value == OfTheAnswer)
            return Number.Read(number, "The tolerance", Relative, problems) is { } percent
                ? Tolerance.Relative(Unit.Percent.Held(percent))
                : null;
        if (match.Success && match.Groups["unit"].Value == unit.Sign)
            return Number.Read(number, "The tolerance", Bounds.ZeroOrMore, problems) is { } amount
                ? Tolerance.Absolute(unit.Held(amount))
                : null;
        problems.Add(
            text.Line,
            $"The tolerance is `{text.Text}`",
            $"Write it in the unit of the answer, such as `1 {unit}`, or as a share, such as `0.5 {OfTheAnswer}`."
        );
        return null;
    }

    /// <summary>Reads the step that answers are rounded to.</summary>
    public static Tolerance? ReadRounding(Located text, Unit unit, ProblemList problems)
    {
        var match = NumberAndUnit().Match(text.Text);
        if (match.Success && match.Groups["unit"].Value == unit.Sign)
            return Number.Read(new(match.Groups["number"].Value, text.Line), "The rounding", Bounds.AboveZero, problems) is { } step
                ? Tolerance.Rounding(unit.Held(step))
                : null;
        problems.Add(
            text.Line,
            $"The rounding is `{text.Text}`",
            $"Write the step in the unit of the answer, such as `1 {unit}` for whole numbers."
        );
        return null;
    }

    [GeneratedRegex(@"^(?<number>[-+0-9.,]+)\s*(?<unit>.*)$")]
    private static partial Regex NumberAndUnit();
}
