using System.Globalization;
using ClassKit.Exercises.Authoring;
using ClassKit.Grading.Answers;
using ClassKit.Wording.Counts;

namespace ClassKit.Workbooks.Dealing;

/// <summary>What stands beside an answer cell: what is asked of it, how exact it must be, what it is worth.</summary>
internal static class AnswerNote
{
    public static string Of(Part part) =>
        part.InWords is not null ? $"{Asked(part)} · {Points(part.Points)}" : $"{Asked(part)} · {Points(part.Points)}\n{Exactness(part)}";

    /// <summary>The unit's cell: a percent cell shows its own sign behind the number, so that its unit says what to expect.</summary>
    public static string UnitBeside(Part part) => part.Unit.IsPercent ? "in %" : part.Unit.Sign;

    public static string Points(decimal points) =>
        string.Create(CultureInfo.InvariantCulture, $"{points:0.##} {Counted.Noun(points, "point")}");

    /// <summary>What an answer cell says when it is chosen, before anything is typed.</summary>
    public static string Prompt(Part part) =>
        part.InWords is not null ? "Your own words, two or three sentences. Alt+Enter begins a new line."
        : part.Choice is { } choice ? $"A letter, {Letters(choice)}: choose it from the list, or type it."
        : part.FormulaAsked ? $"A formula, {In(part)}. Type = and click the cells that it uses."
        : $"A number, {In(part)}; a formula counts as well.";

    /// <summary>What a program says when something else than a number is typed; it may be kept all the same.</summary>
    public static string Warning(Part part) =>
        part.InWords is not null ? $"Your instructor reads the first {TypedWords.Most} characters: say it in fewer words."
        : part.Choice is { } choice ? $"Here a letter is expected, {Letters(choice)}."
        : $"Here a number is expected, or a formula that comes to one, {In(part)}: no words and no unit, for the unit stands beside the cell.";

    private static string In(Part part) =>
        part.Unit.IsPercent ? "in %"
        : part.Unit.IsNone ? "without a unit"
        : $"in {part.Unit}";

    private static string Letters(Choice choice) => $"A to {(char)('A' + choice.From.Options.Count - 1)}";

    private static string Asked(Part part) =>
        part.InWords is not null ? "Your own words; your instructor reads them"
        : part.Choice is not null ? "Choose a letter"
        : part.FormulaAsked ? "Formula asked"
        : "A number is enough";

    private static string Exactness(Part part)
    {
        if (part.Choice is { } choice)
            return $"{Letters(choice)}, from the cell's list or typed";
        var (amount, isRelative) = (part.Tolerance.Amount, part.Tolerance.IsRelative);
        if (amount <= 0)
            return "exact";
        if (part.Tolerance.IsRounding && part.Exactness != part.Tolerance)
            return Multiple(part, part.Unit.Shown(amount));
        if (part.Tolerance.IsRounding)
            return string.Create(CultureInfo.InvariantCulture, $"to the nearest {part.Unit.Shown(amount):0.######} {part.Unit}").TrimEnd();
        if (isRelative)
            return string.Create(CultureInfo.InvariantCulture, $"within ±{Unit.Percent.Shown(amount):0.####} %");
        return part.Unit.IsPercent
            ? string.Create(CultureInfo.InvariantCulture, $"within ±{part.Unit.Shown(amount):0.####} percentage points")
            : string.Create(CultureInfo.InvariantCulture, $"within ±{amount:0.######} {part.Unit}").TrimEnd();
    }

    /// <summary>Where the key rounds as well: not which way, for that is asked.</summary>
    private static string Multiple(Part part, double step) =>
        step != 1 ? string.Create(CultureInfo.InvariantCulture, $"rounded to {step:0.######} {part.Unit}").TrimEnd()
        : part.Unit.IsNone ? "rounded to a whole number"
        : $"rounded to whole {part.Unit}";
}
