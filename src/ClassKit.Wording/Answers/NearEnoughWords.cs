using ClassKit.CellFormulas.Formulas;
using ClassKit.Grading.Findings;
using ClassKit.Grading.Results;
using ClassKit.Wording.Mending;

namespace ClassKit.Wording.Answers;

/// <summary>
/// What is told of a right answer whose formula is not the method, and only comes as near to it as the part allows: the points are theirs,
/// and the praise would be for what the part is there to cure.
/// </summary>
internal static class NearEnoughWords
{
    /// <summary>
    /// What is told; null where nothing is to be said, as of a constant that is written to fewer digits.
    /// </summary>
    public static string? Of(AnswerFinding.Right found, AnswerGrade answer)
    {
        if (
            answer.Formula is not { } formula
            || found is not { Formula: { } named, Cells: { } cells }
            || CellFormula.Parse(named).Formula is not { } over
            || new FormulaShape(formula).Tree is not { } tree
        )
            return null;
        var sheet = new SheetTerms(answer.Exercise, cells);
        if (sheet.HasOtherNumbers(Flat.Of(over.Shape)))
            return null;
        return UnseenWords.Change(answer.Exercise, answer.Part, formula, tree, sheet, named) is var (what, cure)
            ? $"Right for your numbers, and near enough for all points. But it is not the method: {char.ToLowerInvariant(what[0])}{what[1..]}.{cure}"
            : "Right for your numbers, and near enough for all points. But it is not the method: lay your formula beside the worked solution.";
    }
}
