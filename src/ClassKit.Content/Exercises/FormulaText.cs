using ClassKit.CellFormulas;
using ClassKit.Content.Diagnostics;
using ClassKit.Content.Sources;
using ClassKit.Content.Wording;

namespace ClassKit.Content.Exercises;

/// <summary>Cell formulas as exercises write them: between back quotes, with their <c>=</c>.</summary>
internal static class FormulaText
{
    /// <summary>The formula, or null with the reason noted: it does not parse, or uses a name it may not.</summary>
    public static CellFormula? Read(Located text, string what, NameScope names, ProblemList problems)
    {
        var written = text.Text.Trim('`').Trim();
        if (!text.Text.StartsWith('`') || !text.Text.EndsWith('`') || !written.StartsWith('='))
        {
            problems.Add(text.Line, $"{what} is {Prose.Excerpt(text.Text, 100)}", "Write a cell formula between back quotes, such as `=flour*0.65`.");
            return null;
        }
        if (!CellFormula.Parse(written).TryGet(out var formula, out var error))
        {
            problems.Add(text.Line, $"{what} `{Prose.Excerpt(written, 100)}` is no formula at {error.Message}", "Write it as in a spreadsheet cell, with a decimal point and commas between arguments.");
            return null;
        }
        foreach (var name in formula.Names)
            names.Check(name, text.Line, what, problems);
        return formula;
    }
}
