using System.Text.RegularExpressions;
using ClassKit.CellFormulas.Formulas;
using ClassKit.CellFormulas.Syntax;
using ClassKit.Content.Diagnostics;
using ClassKit.Content.Sources;
using ClassKit.Content.Wording;
using ClassKit.Wording.Formulas;

namespace ClassKit.Content.Exercises;

/// <summary>Cell formulas as exercises write them: between back quotes, with their <c>=</c>.</summary>
internal static partial class FormulaText
{
    /// <summary>The formula, or null with the reason noted: it does not parse, or uses a name it may not.</summary>
    public static CellFormula? Read(Located text, string what, NameScope names, ProblemList problems)
    {
        var written = text.Text.Trim('`').Trim();
        var isQuoted = text.Text.StartsWith('`') && text.Text.EndsWith('`') && text.Text.Length > 1;
        if (!isQuoted || !written.StartsWith('='))
        {
            NoteBare(written, isQuoted, text.Line, what, problems);
            return null;
        }
        if (!CellFormula.Parse(written).TryGet(out var formula, out var error))
        {
            problems.Add(
                text.Line,
                $"{what} `{Prose.Excerpt(written, 100)}` is no formula at {SyntaxWords.Of(error)}",
                "Write it as in a spreadsheet cell, with a decimal point and commas between arguments."
            );
            return null;
        }
        if (names.IsWhole && RefersToCells(formula.Root))
        {
            problems.Add(
                text.Line,
                $"{what}, `{Prose.Excerpt(written, 100)}`, refers to cells",
                $"Write the names of givens and earlier parts instead: {string.Join(", ", names.Known)}."
            );
            return null;
        }
        foreach (var name in formula.Names)
            names.Check(name, text.Line, what, problems);
        return formula;
    }

    private static void NoteBare(string written, bool isQuoted, int line, string what, ProblemList problems)
    {
        var formula = written.StartsWith('=') ? written : "=" + written;
        if (CellFormula.Parse(formula).TryGet(out _, out _) && !Words().IsMatch(formula))
            problems.Add(
                line,
                $"{what}, {Prose.Excerpt(written, 100)}, {(isQuoted ? "does not begin with =" : "has no back quotes around it")}",
                $"Write `{formula}`."
            );
        else
            problems.Add(
                line,
                $"{what} reads `{Prose.Excerpt(written)}`, which is no formula",
                "Write a cell formula between back quotes, such as `=flour*0.65`."
            );
    }

    /// <summary>Two words with a space between, which to a spreadsheet are two names and what they have in common.</summary>
    [GeneratedRegex("[A-Za-z]+ [A-Za-z]+")]
    private static partial Regex Words();

    private static bool RefersToCells(FormulaNode node) => node is ReferenceNode || node.Children().Any(RefersToCells);
}
