using System.Text.RegularExpressions;
using ClassKit.Content.Diagnostics;
using ClassKit.Content.Outline;
using ClassKit.Content.Quantities;
using ClassKit.Content.Sources;
using ClassKit.Exercises.Authoring;

namespace ClassKit.Content.Exercises;

/// <summary>Reads the table of givens; its values read <c>400 to 900 by 50</c>, or one number for a constant.</summary>
internal static partial class GivenReader
{
    /// <summary>More values than that is a slip in the step, and no exercise gains by them.</summary>
    private const int MaxCount = 100_000;

    private const string Example = "Write a range such as `400 to 900 by 50` or `65% to 80% by 1%`, or a single number.";
    private static readonly string[] Columns = ["Name", "What it is", "Unit", "Values"];

    public static IReadOnlyList<Given> Read(Section? section, NameScope names, ProblemList problems)
    {
        var givens = new List<Given>();
        var rows = Tables.Rows(section, Columns, problems);
        names.IsWhole = rows.Count > 0 && rows.All(row => row.Optional("Name").Text.Length > 0);
        foreach (var row in rows)
        {
            if (row.Required("Name", problems) is { } name)
            {
                names.Add(name, "given", problems);
                names.Places.Note(new(Given: name.Text), name.Line);
            }
            var label = row.Required("What it is", problems);
            var unit = Unit.Of(row.Optional("Unit").Text);
            UnitWords.NoteGiven(row.Optional("Name").Text, unit, row.Line, problems);
            if (row.Required("Values", problems) is { } values && ReadValues(values, unit, problems) is var (from, to, step))
                givens.Add(new(row.Optional("Name").Text, label?.Text ?? "", unit, from, to, step));
        }
        if (section is not null && rows.Count == 0 && problems.IsEmpty)
            problems.Add(section.Line, "No quantity is given", "Add a row to the table for each quantity that the student is told.");
        return givens;
    }

    private static (decimal From, decimal To, decimal Step)? ReadValues(Located values, Unit unit, ProblemList problems)
    {
        var range = Range().Match(values.Text);
        if (!range.Success)
            return NoteRange(values, unit, problems) ? null
                : ReadNumber(values.Text, values, unit, problems) is { } constant ? (constant, constant, 0)
                : null;
        // One message is enough for a cell: the others would say the same.
        return
            ReadNumber(range.Groups["from"].Value, values, unit, problems) is { } low
            && ReadNumber(range.Groups["to"].Value, values, unit, problems) is { } high
            && ReadNumber(range.Groups["step"].Value, values, unit, problems) is { } distance
            && IsPossible(low, high, distance, values, problems)
            ? (low, high, distance)
            : null;
    }

    /// <summary>Notes a range that is not written as one, if that is what it is.</summary>
    private static bool NoteRange(Located values, Unit unit, ProblemList problems)
    {
        var text = values.Text;
        var bare = !unit.IsNone && !unit.IsPercent ? text.Replace(" " + unit.Sign, "", StringComparison.Ordinal) : text;
        if (bare != text)
            problems.Add(
                values.Line,
                $"In `{text}` the unit is written behind the numbers",
                $"Write the numbers alone, `{bare}`: the unit stands in its own column."
            );
        else if (WithoutStep().IsMatch(text))
            problems.Add(
                values.Line,
                $"In `{text}` it is not said how far apart the values may be",
                $"Write a step behind it, such as `{text} by {(unit.IsPercent ? "1%" : "50")}`."
            );
        else
            return false;
        return true;
    }

    private static bool IsPossible(decimal from, decimal to, decimal step, Located values, ProblemList problems)
    {
        var (found, expected) = (from, to, step) switch
        {
            (_, _, <= 0) => ("the step is not above 0", "Write how far apart the values may be, such as `by 50`."),
            _ when from > to => ("the lowest value is above the highest", "Write the lower one first."),
            _ when from == to => ("the lowest value is the highest", "For a constant write the number alone."),
            _ when (to - from) % step != 0 => (
                "the steps do not reach the highest value",
                "Choose a highest value that lies a whole number of steps above the lowest."
            ),
            _ when (to - from) / step > MaxCount => (
                $"there are more than {MaxCount} values",
                "Choose a larger step, such as a scale can show."
            ),
            _ => ("", ""),
        };
        if (found.Length == 0)
            return true;
        problems.Add(values.Line, $"In `{values.Text}` {found}", expected);
        return false;
    }

    // Percent in the file, a fraction in the cell: 65% is 0.65.
    private static decimal? ReadNumber(string text, Located values, Unit unit, ProblemList problems)
    {
        var isPercent = text.EndsWith('%');
        var digits = isPercent ? text[..^1].TrimEnd() : text;
        if (!Number.TryParse(digits, out var number))
            problems.Add(
                values.Line,
                $"The values read `{values.Text}`",
                digits.Contains(',', StringComparison.Ordinal) ? Number.NumberAdvice(digits) : Example
            );
        else if (Math.Abs(number) > 1_000_000_000)
            problems.Add(values.Line, $"`{text}` is too large", "Choose numbers that a bench can weigh and a person can write down.");
        else if (isPercent != unit.IsPercent)
            problems.Add(
                values.Line,
                isPercent ? $"`{text}` is in percent, but the unit is `{unit}`" : $"The unit is percent, but `{text}` has no percent sign",
                isPercent
                    ? "Write % in the column `Unit` as well."
                    : $"Write a percent sign behind every number, as in `{text}%`; formulas then use {text} % as a fraction of 1."
            );
        else
            return unit.Held(number);
        return null;
    }

    [GeneratedRegex(@"^\S+(\s%)? to \S+(\s%)?$")]
    private static partial Regex WithoutStep();

    [GeneratedRegex(@"^(?<from>\S+(\s%)?) to (?<to>\S+(\s%)?) by (?<step>\S+(\s%)?)$")]
    private static partial Regex Range();
}
