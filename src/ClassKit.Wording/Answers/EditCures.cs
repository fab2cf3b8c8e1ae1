using ClassKit.CellFormulas.Formulas;
using ClassKit.CellFormulas.Syntax;
using ClassKit.Grading.Findings.Edits;

namespace ClassKit.Wording.Answers;

/// <summary>What to change in a formula for one edit to be undone, in its student's cells.</summary>
internal static class EditCures
{
    /// <summary>What is longer is no longer seen at a glance. By eye.</summary>
    private const int Glance = 18;

    /// <summary>A sentence with a space before it; empty where what happened says it already.</summary>
    /// <param name="edit">The edit.</param>
    /// <param name="formula">The student's formula.</param>
    /// <param name="key">The key over the exercise's names.</param>
    /// <param name="sheet">The student's sheet.</param>
    public static string Of(KeyEdit edit, FormulaShape formula, FormulaShape key, SheetTerms sheet) =>
        edit switch
        {
            KeyEdit.OtherOperation(var right, _, var belongs, var used)
                when RightOperand(right, belongs, used, formula, sheet) is { } operand =>
                $" Put {Sign(belongs)} instead of {Sign(used)}, before {operand}.",
            KeyEdit.CountedTwice(_, var written, var term) when OneTooMany(written, term, sheet) is var more && formula.HasText(more) =>
                $" Leave out one {more}.",
            KeyEdit.CountedTwice => " Once is enough.",
            KeyEdit.OtherUnit(_, var unit, _, _) when key.Holds(unit) => " Once is enough.",
            KeyEdit.TakenIn(_, _, var term, var operation)
                when formula.Holds(sheet.Cells(edit.Written)) && sheet.Cells(term) is { Length: <= Glance } cells =>
                $" Leave out {Sign(operation)}{cells}.",
            KeyEdit.TakenIn or KeyEdit.OtherUnit { From: "%" } => " Leave that out.",
            KeyEdit.OtherBrackets when sheet.Cells(edit.Right).Length <= 2 * Glance => $" Write it as {sheet.Cells(edit.Right)}.",
            KeyEdit.LeftOut
            or KeyEdit.OtherConstant
            or KeyEdit.TurnedRound
            or KeyEdit.ShareForRest
            or KeyEdit.ShareOfOtherEnd
            or KeyEdit.OtherUnit when IsShort(edit, sheet) && formula.Times(sheet.Cells(edit.Written)) == 1 =>
                $" Write {sheet.Cells(edit.Right)} instead of {sheet.Cells(edit.Written)}.",
            KeyEdit.OtherSign when formula.Tree is PrefixNode { Operator: PrefixOperator.Minus } => " Leave out the minus at the front.",
            KeyEdit.Inverse when formula.IsWritten(sheet.Cells(edit.Written)) => $" Leave out 1/ and keep {sheet.Cells(edit.Right)}.",
            KeyEdit.OtherSign => " Look for a minus too many or too few, or for a subtraction that is the other way round.",
            _ => "",
        };

    private static bool IsShort(KeyEdit edit, SheetTerms sheet) =>
        sheet.Cells(edit.Right).Length <= Glance && sheet.Cells(edit.Written).Length <= Glance;

    /// <summary>As it stands in the formula where a product was multiplied on that is to be added: neither needs brackets.</summary>
    private static string? RightOperand(string right, BinaryOperator belongs, BinaryOperator used, FormulaShape formula, SheetTerms sheet)
    {
        if (CellFormula.Of("=" + sheet.Cells(right)).Shape is not BinaryNode { Right: var node })
            return null;
        var text = FormulaShape.Text(node);
        var isBare =
            belongs is BinaryOperator.Add or BinaryOperator.Subtract
            && node is BinaryNode { Operator: BinaryOperator.Multiply or BinaryOperator.Divide }
            && formula.HasText(Sign(used) + text);
        return text.Length > Glance ? null
            : isBare ? text
            : SheetTerms.Quoted(node, text);
    }

    private static string OneTooMany(string written, string term, SheetTerms sheet) =>
        Sign(EditWords.OperationOf(written)) + SheetTerms.Quoted(CellFormula.Of("=" + term).Shape, sheet.Cells(term));

    private static char Sign(BinaryOperator operation) =>
        operation switch
        {
            BinaryOperator.Add => '+',
            BinaryOperator.Subtract => '-',
            BinaryOperator.Multiply => '*',
            BinaryOperator.Divide => '/',
            _ => '^',
        };
}
