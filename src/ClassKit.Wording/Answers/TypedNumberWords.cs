using ClassKit.CellFormulas.Formulas;
using ClassKit.CellFormulas.Syntax;
using ClassKit.Exercises.Authoring;
using ClassKit.Grading.Findings;
using ClassKit.Grading.Findings.Edits;

namespace ClassKit.Wording.Answers;

/// <summary>
/// What a student is told of a number without a formula: quantities with their units, what was done with which, and what to do.
/// </summary>
internal static class TypedNumberWords
{
    /// <summary>What is told.</summary>
    /// <param name="miss">What was found.</param>
    /// <param name="exercise">The exercise.</param>
    /// <param name="part">The part.</param>
    /// <param name="sheet">The sheet without its cells.</param>
    public static NearMissTold Of(AnswerFinding.NearMiss miss, Exercise exercise, Part part, SheetTerms sheet)
    {
        var key = new FormulaShape(part.Key.ToString());
        var spot = ChangedSpot.Between(part.Key.Shape, CellFormula.Of(miss.Formula).Shape);
        var what = miss.Edits is [var only]
            ? Misused(only, spot, sheet, key) ?? What(Seen(only, key), miss, exercise, part, sheet, key)
            : MethodWords.Several(miss.Edits, part, sheet, key);
        return new($"From your number, it looks as if {what}", miss.Edits is [var one] ? Cure(Seen(one, key), sheet, key) : "", miss.Edits);
    }

    private static string What(
        KeyEdit edit,
        AnswerFinding.NearMiss miss,
        Exercise exercise,
        Part part,
        SheetTerms sheet,
        FormulaShape key
    ) =>
        edit is KeyEdit.OtherSign or KeyEdit.CountedTwice || key.Times(edit.Right) > 1
            ? EditWords.What(SeenFrom.Outside(edit, part.Key.Shape), sheet, key)
            : MethodWords.Of([edit], exercise, part, CellFormula.Of(miss.Formula), sheet);

    /// <summary>The whole turned round is the right number with another sign, and a number does not tell how it came by that.</summary>
    private static KeyEdit Seen(KeyEdit edit, FormulaShape key) =>
        edit is KeyEdit.TurnedRound(var right, var written, BinaryOperator.Subtract) && key.IsWritten(right)
            ? new KeyEdit.OtherSign(right, written)
            : edit;

    /// <summary>
    /// With what it was used, so that nobody has to guess which number of the sheet is meant, and in which step; null where that is no
    /// single quantity.
    /// </summary>
    private static string? Misused(KeyEdit edit, ChangedSpot? spot, SheetTerms sheet, FormulaShape key)
    {
        if (spot is null || edit is not (KeyEdit.OtherCell or KeyEdit.OtherConstant) || EditWords.IsOfWrongWhole(edit, sheet, key))
            return null;
        var (right, beside) = (sheet.Term(edit.Right), spot.Beside is NumberNode { Value: 1 } ? null : sheet.TermOf(spot.Beside));
        var written =
            sheet.Term(edit.Written) is var other && other == beside && spot.Right.Operator == BinaryOperator.Multiply ? "itself" : other;
        return (spot.Right.Operator, spot.IsLeft, beside) switch
        {
            (BinaryOperator.Multiply, _, _) => $"you multiplied {With(beside)}by {written} instead of by {right}",
            (BinaryOperator.Divide, false, _) => $"you divided {With(beside)}by {written} instead of by {right}",
            (BinaryOperator.Divide, true, not null) => $"you divided {written}, and not {right}, by {beside}",
            (BinaryOperator.Add, _, not null) => $"you added {written}, and not {right}, to {beside}",
            (BinaryOperator.Subtract, false, not null) => $"you subtracted {written}, and not {right}, from {beside}",
            (BinaryOperator.Subtract, true, not null) => $"you subtracted {beside} from {written} instead of from {right}",
            _ => null,
        };
    }

    private static string With(string? quantity) => quantity is null ? "" : quantity + " ";

    private static string Cure(KeyEdit edit, SheetTerms sheet, FormulaShape key) =>
        edit switch
        {
            KeyEdit.CountedTwice(_, var written, var term) when key.Times(term) <= 1 => Once(EditWords.OperationOf(written)),
            KeyEdit.OtherUnit(_, var unit, _, _) when key.Holds(unit) => " Once is enough.",
            KeyEdit.TakenIn or KeyEdit.OtherUnit => " Leave that out.",
            KeyEdit.ShareForRest(_, ['1', '-' or '+', ..]) => " Use it as it is.",
            KeyEdit.OtherSign or KeyEdit.Inverse => TheRightWay(edit.Right, sheet),
            _ => "",
        };

    private static string Once(BinaryOperator operation) =>
        operation switch
        {
            BinaryOperator.Divide => " Divide by it once.",
            BinaryOperator.Multiply => " Multiply by it once.",
            BinaryOperator.Subtract => " Subtract it once.",
            _ => " Add it once.",
        };

    private static string TheRightWay(string right, SheetTerms sheet) =>
        CellFormula.Of("=" + right).Shape is BinaryNode { Operator: var operation, Left: var left, Right: var last }
        && sheet.TermOf(left) is { } first
        && sheet.TermOf(last) is { } second
            ? operation switch
            {
                BinaryOperator.Subtract => $" Subtract {second} from {first}.",
                BinaryOperator.Divide => $" Divide {first} by {second}.",
                _ => "",
            }
            : "";
}
