using System.Text.RegularExpressions;
using ClassKit.CellFormulas.Formulas;
using ClassKit.CellFormulas.Values;
using ClassKit.Exercises.Authoring;
using ClassKit.Grading.Answers;
using ClassKit.Grading.Finding;
using ClassKit.Grading.Findings;

namespace ClassKit.Grading.Judging;

/// <summary>Finds what keeps a text or a logical from being the number asked for, and where it stands.</summary>
internal static partial class UnreadableAnswer
{
    /// <summary>What was found.</summary>
    /// <param name="value">Neither a number, an error nor blank.</param>
    /// <param name="part">The part.</param>
    public static AnswerFinding Find(CellValue value, Part part)
    {
        var text = value.ToString();
        if (value.IsText && TypedFormula.Begins(text))
            return NoFormula(text);
        if (value.IsText && IsFormulaWithoutSign(text))
            return new AnswerFinding.LacksEqualsSign(new(text));
        var (kind, found, place) = UnreadableText.In(text, part.Unit);
        return new AnswerFinding.NoNumber(kind, new(text), text.Length, new(found), place);
    }

    private static AnswerFinding NoFormula(string text) =>
        CellFormula.Parse(TypedFormula.Readings(text).First()).TryGet(out var formula, out var error)
            ? new AnswerFinding.NamesNoCell(formula.Names.Count == 0 ? null : new(formula.Names[0]))
            : new AnswerFinding.BrokenFormula(error.Found, error.Position + 1);

    /// <summary><c>C7*C8</c>: with an equals sign it would be one.</summary>
    private static bool IsFormulaWithoutSign(string text) =>
        CellByOperator().IsMatch(text) && TypedFormula.Readings("=" + text).Any(reading => CellFormula.Parse(reading).Formula is not null);

    [GeneratedRegex(
        @"\b[A-Z]{1,2}\$?[0-9]{1,4}\s*[*/+^×÷·-]|[*/+^(×÷·-]\s*\$?[A-Z]{1,2}\$?[0-9]{1,4}\b",
        RegexOptions.CultureInvariant | RegexOptions.IgnoreCase
    )]
    private static partial Regex CellByOperator();
}
