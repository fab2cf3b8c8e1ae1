using System.Globalization;
using ClassKit.Desk.Texts;
using ClassKit.Exercises.Authoring;
using ClassKit.Terms.Rules;

namespace ClassKit.Desk.Marks;

/// <summary>
/// What is commonly changed of the rule that makes grades, between its file and a form: each value goes into its own line or cell, and
/// everything else of the file stays.
/// </summary>
internal static class RuleFields
{
    private const string Categories = "## Categories",
        Passed = "## Must be passed",
        Scale = "## Scale";

    /// <summary>Steps that results are commonly rounded to, as the file has them.</summary>
    private static readonly string[] Steps = ["none", "0.1 %", "0.5 %", "1 %", "5 %"];

    /// <summary>The field of a row of a table.</summary>
    /// <param name="column">Which column.</param>
    /// <param name="row">Which row, from 0.</param>
    public static string Of(string column, int row) => string.Create(CultureInfo.InvariantCulture, $"{column}.{row}");

    /// <summary>What stands in the fields, by their names.</summary>
    public static IReadOnlyDictionary<string, string> Shown(GradeRule rule)
    {
        ArgumentNullException.ThrowIfNull(rule);
        Dictionary<string, string> shown = new()
        {
            ["resit"] = rule.Resit.Choice == ResitChoice.Better ? "better" : "replaces",
            ["resit-most"] = rule.Resit.AtMost == 1 ? "" : Number(Unit.Percent.Shown(rule.Resit.AtMost)),
            ["absent"] = rule.Absence == AbsenceRule.Zero ? "zero" : "left out",
            ["late"] = Number(Unit.Percent.Shown(rule.LateOff)),
            ["second-marker"] = rule.SecondMarker == MarkerRule.Mean ? "mean" : "first",
            ["rounding"] = rule.Rounding.Step is { } least ? $"{Number(least)} %" : "none",
            ["tie"] = rule.Rounding.Tie switch
            {
                TieRule.Up => "up",
                TieRule.Down => "down",
                TieRule.Even => "even",
            },
        };
        foreach (var (row, category) in rule.Categories.Index())
        {
            shown[Of("weight", row)] = Number(Unit.Percent.Shown(category.Weight));
            shown[Of("drop", row)] = Number(category.DropLowest);
            shown[Of("count", row)] = category.Counting == CategoryCounting.Alike ? "alike" : "by points";
        }
        foreach (var (row, line) in rule.Lines.Index())
        {
            shown[Of("least", row)] = Number(line.AtLeast);
            shown[Of("most", row)] = rule.Scale.Steps[line.OtherwiseAtMost].Grade;
        }
        foreach (var (row, step) in rule.Scale.Steps.Index())
            shown[Of("from", row)] = Number(step.From);
        return shown;
    }

    /// <summary>What can be chosen for the step that results are rounded to, that of the rule among it.</summary>
    public static IReadOnlyList<string> StepsWith(string own) => Steps.Contains(own) ? Steps : [own, .. Steps];

    /// <summary>The file's text with what was typed; null where it has no place for it.</summary>
    /// <param name="text">The file, with line feeds alone.</param>
    /// <param name="rule">What stands in it.</param>
    /// <param name="typed">What was typed into a field; null for one that was not sent.</param>
    public static string? With(string text, GradeRule rule, Func<string, string?> typed)
    {
        ArgumentNullException.ThrowIfNull(rule);
        ArgumentNullException.ThrowIfNull(typed);
        var shown = Shown(rule);
        string? New(string name) => typed(name) is { } value && value != shown[name] ? value : null;
        string? whole = text;
        void Cell(string heading, string row, string column, string? value)
        {
            if (value is not null && whole is not null)
                whole = TableLines.WithCell(whole, heading, row, column, value);
        }
        void Line(string key, string? value)
        {
            if (value is not null && whole is not null)
                whole = FrontLines.With(whole, key, value);
        }
        foreach (var (row, category) in rule.Categories.Index())
        {
            Cell(Categories, category.Name, "weight", Percent(New(Of("weight", row))));
            Cell(Categories, category.Name, "drop lowest", New(Of("drop", row)));
            Cell(Categories, category.Name, "works count", New(Of("count", row)));
        }
        foreach (var (row, line) in rule.Lines.Index())
        {
            Cell(Passed, line.What, "at least", Percent(New(Of("least", row))));
            Cell(Passed, line.What, "otherwise at most", New(Of("most", row)));
        }
        foreach (var (row, step) in rule.Scale.Steps.Index())
            Cell(Scale, step.Grade, "from", Percent(New(Of("from", row))));
        if (New("resit") is not null || New("resit-most") is not null)
        {
            var most = typed("resit-most") ?? shown["resit-most"];
            Line("resit", (typed("resit") ?? shown["resit"]) + (most.Length > 0 ? $", at most {Percent(most)}" : ""));
        }
        Line("absent", New("absent"));
        Line("late", Percent(New("late")));
        Line("second marker", New("second-marker"));
        Line("rounding", New("rounding"));
        Line("tie", New("tie"));
        return whole;
    }

    /// <summary>With a point and its sign, however it was typed; a cell is never left without anything in it.</summary>
    private static string? Percent(string? typed) =>
        typed is null ? null
        : typed.Trim().TrimEnd('%').Trim() is { Length: > 0 } number ? $"{number.Replace(',', '.')} %"
        : "0 %";

    private static string Number(decimal value) => value.ToString("0.##########", CultureInfo.InvariantCulture);
}
