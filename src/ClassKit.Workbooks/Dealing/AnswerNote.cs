using System.Globalization;
using ClassKit.Exercises.Authoring;
using ClassKit.Wording.Counts;

namespace ClassKit.Workbooks.Dealing;

/// <summary>What stands beside an answer cell: what is asked of it, how exact it must be, what it is worth.</summary>
internal static class AnswerNote
{
    public static string Of(Part part) => $"{Asked(part)} · {Points(part.Points)}\n{Exactness(part)}";

    /// <summary>The unit's cell: a percent cell shows its own sign behind the number, so that its unit says what to expect.</summary>
    public static string Unit(Part part) => AnswerUnit.IsPercent(part.Unit) ? "in %" : part.Unit;

    public static string Points(decimal points) =>
        string.Create(CultureInfo.InvariantCulture, $"{points:0.##} {Counted.Noun(points, "point")}");

    private static string Asked(Part part) => part.FormulaAsked ? "Formula asked" : "A number is enough";

    private static string Exactness(Part part)
    {
        var (amount, isRelative) = (part.Tolerance.Amount, part.Tolerance.IsRelative);
        if (amount <= 0) return "exact";
        if (part.Tolerance.IsRounding) return string.Create(CultureInfo.InvariantCulture, $"right to the nearest {AnswerUnit.Shown(part.Unit, amount):0.######} {part.Unit}").TrimEnd();
        if (isRelative) return string.Create(CultureInfo.InvariantCulture, $"right within ±{AnswerUnit.Shown(AnswerUnit.Percent, amount):0.####} %");
        return AnswerUnit.IsPercent(part.Unit)
            ? string.Create(CultureInfo.InvariantCulture, $"right within ±{AnswerUnit.Shown(part.Unit, amount):0.####} percentage points")
            : string.Create(CultureInfo.InvariantCulture, $"right within ±{amount:0.######} {part.Unit}").TrimEnd();
    }
}
