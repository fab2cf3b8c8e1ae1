using System.Diagnostics;
using ClassKit.CellFormulas.Formulas;
using ClassKit.CellFormulas.Syntax;
using ClassKit.Grading.Findings.Edits;

namespace ClassKit.Wording.Answers;

/// <summary>What one edit looks like on the student's sheet: the rest of a sentence that begins with “It looks as if”.</summary>
internal static class EditWords
{
    /// <summary>Why it matters stands with it: it is the commonest slip of all.</summary>
    public const string OtherBrackets =
        "brackets are missing, or stand around something else: a spreadsheet works from left to right, and multiplies and divides before it adds and subtracts";

    /// <summary>What happened, without the formulas.</summary>
    /// <param name="edit">The edit.</param>
    /// <param name="sheet">The student's sheet.</param>
    /// <param name="key">The key over the exercise's names, where it is at hand: what is done there anyhow was done once too often, or not
    /// everywhere.</param>
    public static string What(KeyEdit edit, SheetTerms sheet, FormulaShape? key = null) =>
        edit switch
        {
            KeyEdit.OtherCell when IsOfWrongWhole(edit, sheet, key) =>
                $"the percentage was taken of {sheet.Term(edit.Written)} instead of {sheet.Term(edit.Right)}",
            KeyEdit.OtherCell => $"{sheet.Term(edit.Written)} was used instead of {sheet.Term(edit.Right)}",
            KeyEdit.LeftOut left => LeftOut(left, sheet, key),
            KeyEdit.OtherOperation operation => OtherOperation(operation, sheet),
            KeyEdit.TurnedRound turned => TurnedRound(turned, sheet),
            KeyEdit.CountedTwice(_, var written, var term) =>
                $"{Done(sheet.Piece(term), OperationOf(written), sheet)} {(key?.Times(term) > 1 ? "once too often" : "twice")}",
            KeyEdit.TakenIn(_, _, var term, var operation) => $"{Done(sheet.Piece(term), operation, sheet)}, which the method does not do",
            KeyEdit.OtherBrackets => OtherBrackets,
            KeyEdit.ShareForRest => ShareForRest(edit, sheet),
            KeyEdit.ShareOfOtherEnd => ShareOfOtherEnd(edit),
            KeyEdit.Inverse => $"{sheet.You} worked out 1 divided by the right answer",
            KeyEdit.OtherUnit { From: "%" } =>
                $"{sheet.Term(edit.Right)} was {(OperationOf(edit.Written) == BinaryOperator.Divide ? "divided" : "multiplied")} by 100, though a percentage counts as a fraction: 80 % as 0.80",
            KeyEdit.OtherUnit(_, var written, var from, var to) when key?.Holds(written) == true =>
                $"{sheet.Called(edit.Right)} was turned from {from} into {to} twice",
            KeyEdit.OtherUnit(_, _, var from, var to) =>
                $"{sheet.Called(edit.Right)} was turned from {from} into {to}, which the method does not ask for",
            KeyEdit.OtherConstant => $"{edit.Written} was used instead of {edit.Right}",
            KeyEdit.OtherSign => "only the sign is wrong",
            KeyEdit.OtherRounding => edit.Right.StartsWith("ROUND", StringComparison.Ordinal)
                ? "the result was not rounded as the method rounds it"
                : "something was rounded on the way",
            _ => throw new UnreachableException($"No words for {edit}."),
        };

    /// <summary>True for a percentage that was taken of another quantity, where there is but one percentage.</summary>
    public static bool IsOfWrongWhole(KeyEdit edit, SheetTerms sheet, FormulaShape? key) =>
        edit is KeyEdit.OtherCell { IsWhole: true }
        && !sheet.IsPercent(edit.Written)
        && (key is null || key.Names.Count(sheet.IsPercent) < 2);

    /// <summary>What is done last in an expression.</summary>
    public static BinaryOperator OperationOf(string expression) =>
        CellFormula.Of("=" + expression).Shape is BinaryNode binary ? binary.Operator : BinaryOperator.Multiply;

    private static string LeftOut(KeyEdit.LeftOut edit, SheetTerms sheet, FormulaShape? key) =>
        (CellFormula.Of("=" + edit.Right).Shape, edit.Operation) switch
        {
            (BinaryNode { Operator: BinaryOperator.Divide }, BinaryOperator.Multiply) =>
                $"{sheet.Piece(edit.Term)} is missing, which has to be divided by {sheet.Piece(edit.Written)}",
            (BinaryNode { Operator: BinaryOperator.Subtract }, BinaryOperator.Add) =>
                $"{sheet.Piece(edit.Term)} is missing, from which {sheet.Piece(edit.Written)} has to be subtracted",
            _ when key?.Times(edit.Right) > 1 =>
                $"{Undone(sheet.Piece(edit.Term), edit.Operation, sheet)} in one of {key.Times(edit.Right)} places",
            _ => Undone(sheet.Piece(edit.Term), edit.Operation, sheet),
        };

    /// <summary>What was not done with a term.</summary>
    public static string Undone(string term, BinaryOperator operation, SheetTerms sheet) =>
        operation switch
        {
            BinaryOperator.Subtract => $"{term} was not subtracted",
            BinaryOperator.Divide => $"{sheet.You} did not divide by {term}",
            BinaryOperator.Power => $"the power {term} was left out",
            BinaryOperator.Multiply => $"{sheet.You} did not multiply by {term}",
            _ => $"{term} was not added",
        };

    /// <summary>What was done with a term.</summary>
    public static string Done(string term, BinaryOperator operation, SheetTerms sheet) =>
        operation switch
        {
            BinaryOperator.Subtract => $"{term} was subtracted",
            BinaryOperator.Divide => $"{sheet.You} divided by {term}",
            BinaryOperator.Multiply => $"{sheet.You} multiplied by {term}",
            BinaryOperator.Power => $"{sheet.You} raised to the power {term}",
            _ => $"{term} was added",
        };

    /// <summary>With what it was done to, where that is not too long: a method may well add elsewhere.</summary>
    private static string OtherOperation(KeyEdit.OtherOperation edit, SheetTerms sheet) =>
        CellFormula.Of("=" + edit.Right).Shape is BinaryNode { Right: var operand } && TermOf(operand, sheet) is { } term
            ? $"{Done(term, edit.Used, sheet)}, where {Needed(edit.Belongs, sheet)}"
            : $"{sheet.You} {Did(edit.Used)} where {sheet.You} need to {ToDo(edit.Belongs)}{(edit.Belongs == BinaryOperator.Power ? " to a power" : "")}";

    /// <summary>What there is to be done with a term that was just named.</summary>
    public static string Needed(BinaryOperator belongs, SheetTerms sheet) =>
        $"{sheet.You} need to {ToDo(belongs)}{(belongs is BinaryOperator.Add or BinaryOperator.Subtract ? " it" : belongs == BinaryOperator.Power ? " to that power" : " by it")}";

    /// <summary>With both quantities where they are no longer than that: a method may well divide elsewhere.</summary>
    private static string TurnedRound(KeyEdit.TurnedRound edit, SheetTerms sheet) =>
        edit.Operation != BinaryOperator.Power
        && CellFormula.Of("=" + edit.Right).Shape is BinaryNode right
        && TermOf(right.Left, sheet) is { } first
        && TermOf(right.Right, sheet) is { } second
            ? $"{(edit.Operation == BinaryOperator.Subtract ? $"{first} was subtracted from {second}" : $"{second} was divided by {first}")}, and not the other way round"
            : $"the {Noun(edit.Operation)} is the other way round";

    private static string? TermOf(FormulaNode operand, SheetTerms sheet) =>
        sheet.TermOf(operand) ?? (CellFormula.OfTree(operand).Names.Count is 1 or 2 ? sheet.Piece(FormulaShape.Text(operand)) : null);

    private static string ShareForRest(KeyEdit edit, SheetTerms sheet) =>
        (edit.Right, edit.Written) switch
        {
            (_, ['1', '-', ..]) => $"{sheet.You} subtracted {sheet.Term(edit.Right)} from 1, which the method does not do",
            (_, ['1', '+', ..]) => $"{sheet.You} added 1 to {sheet.Term(edit.Right)}, which the method does not do",
            (['1', '-', ..], _) =>
                $"{sheet.You} used {sheet.Term(edit.Written)} itself, where {sheet.You} need 1 minus that share: what is left without it",
            _ =>
                $"{sheet.You} used {sheet.Term(edit.Written)} alone, where {sheet.You} need 1 plus that share: the whole and the share on top of it",
        };

    private static string ShareOfOtherEnd(KeyEdit edit) =>
        (
            edit.Right.Contains("/(1-", StringComparison.Ordinal),
            edit.Right.Contains("*(1-", StringComparison.Ordinal),
            edit.Right.Contains("*(1+", StringComparison.Ordinal)
        ) switch
        {
            (true, _, _) => "the share was put on to what is left, where it has to be divided out: it is a share of what there was before",
            (_, true, _) => "the share was divided out, where it has to be taken off: it is a share of what there was before",
            (_, _, true) => "the share was divided out, where it has to be put on: it is a share of what you begin with",
            _ => "the share was taken off what came out, where it has to be divided out: it is a share of what there was before",
        };

    private static string Did(BinaryOperator op) =>
        op switch
        {
            BinaryOperator.Add => "added",
            BinaryOperator.Subtract => "subtracted",
            BinaryOperator.Multiply => "multiplied",
            BinaryOperator.Divide => "divided",
            _ => "raised to a power",
        };

    private static string ToDo(BinaryOperator op) =>
        op switch
        {
            BinaryOperator.Add => "add",
            BinaryOperator.Subtract => "subtract",
            BinaryOperator.Multiply => "multiply",
            BinaryOperator.Divide => "divide",
            _ => "raise",
        };

    /// <summary>What an operation makes.</summary>
    public static string Noun(BinaryOperator op) =>
        op switch
        {
            BinaryOperator.Subtract => "subtraction",
            BinaryOperator.Divide => "division",
            _ => "power",
        };
}
