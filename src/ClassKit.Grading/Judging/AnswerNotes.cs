using System.Globalization;
using ClassKit.CellFormulas;
using ClassKit.Exercises;

namespace ClassKit.Grading;

/// <summary>What a student is told of an answer: facts and the next step, one or two sentences.</summary>
internal static class AnswerNotes
{
    public const string Sound = "Right, and your formula follows the sheet's numbers.";

    public static string Blank(CellAddress cell) => $"Nothing was entered in {cell.Cell}.";

    public static string Unsupported(Evaluation evaluation) =>
        $"We could not work out this formula ({evaluation.Reason ?? "it depends on the clock or on chance"}). It costs you nothing; your instructor will look at it.";

    public static string ErrorValue(Evaluation evaluation) => evaluation.Value.Error switch
    {
        CellError.DivideByZero => "Your formula comes to #DIV/0!: it divides by zero or by an empty cell. Check which cell stands below the division.",
        CellError.Value => "Your formula comes to #VALUE!: one of its cells holds text where a number is needed. Type numbers without their unit.",
        CellError.Reference => "Your formula comes to #REF!: it points at a cell that is not there, or at itself.",
        CellError.Name => "Your formula comes to #NAME?: a name in it is not known. Check its spelling.",
        var error => $"Your formula comes to {CellErrorText.Of(error)}, which is not a number.",
    };

    public static string Unreadable(CellValue value, Part part) => value.IsText && value.Text.StartsWith('=')
        ? "The formula stands there as text, so it was never worked out. Enter it again in a cell that is not formatted as text."
        : $"“{Shorten(value.ToString())}” is no number we can read. Enter {(part.FormulaAsked ? "a formula" : "a number")} without words{(part.Unit.Length == 0 ? "" : $"; the unit {part.Unit} stands beside the cell")}.";

    public static string ValueOnly(Part part, bool hasFormula) => (part.FormulaAsked, hasFormula) switch
    {
        (false, _) => "Right.",
        (true, true) => "The number is right for your sheet, but the formula does not follow when the given numbers change: something in it is typed that should be a cell.",
        (true, false) => "The number is right. A formula was asked for, one that works from the given cells, so the method's share is missing.",
    };

    public static string FollowThrough(Part part, IReadOnlyList<Part> wrong, bool methodShown) => methodShown || !part.FormulaAsked
        ? $"The method is right. It carries on the slip in {Parts(wrong)}, which was counted there and not again here."
        : $"The number follows rightly from your own {Parts(wrong)}, where the slip was counted. A formula was asked for, so the method's share is missing.";

    public static string Waiting(IReadOnlyList<Part> unusable) =>
        $"Your formula is right; it only lacks a number in {Parts(unusable)} to work from. That was counted there and not again here.";

    public static string Incorrect(double value, double expected) =>
        ScaleSlip(value, expected) is { } factor
            ? $"Your answer is {factor} what it should be: check the units and the percent sign before the method."
            : "This is not the right number. Compare it with the worked solution, one step at a time.";

    /// <summary>A wrong answer that is the right one but for a power of ten is most likely a slip of units.</summary>
    private static string? ScaleSlip(double value, double expected)
    {
        if (value == 0 || expected == 0) return null;
        foreach (var factor in (ReadOnlySpan<int>)[10, 100, 1000])
        {
            if (IsNear(value, expected * factor)) return string.Create(CultureInfo.InvariantCulture, $"{factor} times");
            if (IsNear(value, expected / factor)) return string.Create(CultureInfo.InvariantCulture, $"1/{factor} of");
        }
        return null;
    }

    private static bool IsNear(double value, double other) => Math.Abs(value - other) <= 0.005 * Math.Abs(other);

    private static string Parts(IReadOnlyList<Part> parts) =>
        (parts.Count == 1 ? "part " : "parts ") + string.Join(" and ", parts.Select(part => $"“{part.Ask.TrimEnd('.', '?')}”"));

    private static string Shorten(string text) => text.Length <= 40 ? text : text[..39] + "…";
}
