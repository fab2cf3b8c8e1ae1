using System.Diagnostics;
using ClassKit.CellFormulas.Formulas;
using ClassKit.CellFormulas.Syntax;
using ClassKit.Grading.Findings.Edits;

namespace ClassKit.Wording.Answers;

/// <summary>What one edit looks like on the student's sheet: the rest of a sentence that begins with “It looks as if”.</summary>
internal static class EditWords
{
    /// <summary>What happened, without the formulas.</summary>
    public static string What(KeyEdit edit, SheetTerms sheet) => edit switch
    {
        KeyEdit.OtherCell { IsWhole: true } => $"the percentage was taken of {sheet.Term(edit.Written)} instead of {sheet.Term(edit.Right)}",
        KeyEdit.OtherCell => $"{sheet.Term(edit.Written)} was used instead of {sheet.Term(edit.Right)}",
        KeyEdit.LeftOut(_, _, var term, var operation) => LeftOut(sheet, term, operation),
        KeyEdit.OtherOperation(_, _, var belongs, var used) => $"you {Did(used)} where the method {Does(belongs)}",
        KeyEdit.TurnedRound(_, _, var operation) => $"the {Noun(operation)} is the other way round",
        KeyEdit.CountedTwice(_, var written, var term) => $"{TakenIn(sheet.Term(term), OperationOf(written))} twice",
        KeyEdit.TakenIn(_, _, var term, var operation) => $"{TakenIn(sheet.Term(term), operation)} as well, which the method does not do",
        KeyEdit.OtherBrackets => "brackets are missing, or stand around something else",
        KeyEdit.ShareForRest => ShareForRest(edit, sheet),
        KeyEdit.ShareOfOtherEnd => ShareOfOtherEnd(edit),
        KeyEdit.Inverse => "you worked out 1 divided by what is asked for",
        KeyEdit.OtherUnit { From: "%" } => $"{sheet.Term(edit.Right)} was {(OperationOf(edit.Written) == BinaryOperator.Divide ? "divided" : "multiplied")} by 100, though a percentage counts as a fraction: 80 % as 0.80",
        KeyEdit.OtherUnit(_, _, var from, var to) => $"{sheet.Term(edit.Right)} was turned from {from} into {to}, which the method does not ask for",
        KeyEdit.OtherConstant => $"{edit.Written} was used instead of {edit.Right}",
        KeyEdit.OtherSign => "only the sign is wrong",
        KeyEdit.OtherRounding => edit.Right.StartsWith("ROUND", StringComparison.Ordinal) ? "the result was not rounded as the method rounds it" : "something was rounded on the way",
        _ => throw new UnreachableException($"No words for {edit}."),
    };

    /// <summary>What is done last in an expression.</summary>
    private static BinaryOperator OperationOf(string expression) => CellFormula.Of("=" + expression).Shape is BinaryNode binary ? binary.Operator : BinaryOperator.Multiply;

    private static string LeftOut(SheetTerms sheet, string term, BinaryOperator operation) => operation switch
    {
        BinaryOperator.Subtract => $"{sheet.Piece(term)} was not taken away",
        BinaryOperator.Divide => $"you did not divide by {sheet.Piece(term)}",
        BinaryOperator.Power => $"the power {sheet.Piece(term)} was left out",
        BinaryOperator.Multiply => $"you did not multiply by {sheet.Piece(term)}",
        _ => $"{sheet.Piece(term)} was not added",
    };

    private static string TakenIn(string term, BinaryOperator operation) => operation switch
    {
        BinaryOperator.Subtract => $"{term} was taken away",
        BinaryOperator.Divide => $"you divided by {term}",
        BinaryOperator.Multiply => $"you multiplied by {term}",
        _ => $"{term} was added",
    };

    private static string ShareForRest(KeyEdit edit, SheetTerms sheet) => (edit.Right, edit.Written) switch
    {
        (_, ['1', '-', ..]) => $"you worked with what is left without {sheet.Term(edit.Right)}, where that share itself belongs",
        (_, ['1', '+', ..]) => $"you worked with the whole and {sheet.Term(edit.Right)} on top of it, where that share alone belongs",
        (['1', '-', ..], _) => $"you worked with {sheet.Term(edit.Written)} itself, where what is left without it belongs",
        _ => $"you worked with {sheet.Term(edit.Written)} alone, where the whole with that share on top of it belongs",
    };

    private static string ShareOfOtherEnd(KeyEdit edit) => (edit.Right.Contains("/(1-", StringComparison.Ordinal), edit.Right.Contains("*(1-", StringComparison.Ordinal), edit.Right.Contains("*(1+", StringComparison.Ordinal)) switch
    {
        (true, _, _) => "the share was put on to what is left, where it has to be divided out: it is a share of what there was before",
        (_, true, _) => "the share was divided out, where it has to be taken off: it is a share of what there was before",
        (_, _, true) => "the share was divided out, where it has to be put on: it is a share of what you begin with",
        _ => "the share was taken off what came out, where it has to be divided out: it is a share of what there was before",
    };

    private static string Did(BinaryOperator op) => op switch
    {
        BinaryOperator.Add => "added",
        BinaryOperator.Subtract => "subtracted",
        BinaryOperator.Multiply => "multiplied",
        BinaryOperator.Divide => "divided",
        _ => "raised to a power",
    };

    private static string Does(BinaryOperator op) => op switch
    {
        BinaryOperator.Add => "adds",
        BinaryOperator.Subtract => "subtracts",
        BinaryOperator.Multiply => "multiplies",
        BinaryOperator.Divide => "divides",
        _ => "raises to a power",
    };

    private static string Noun(BinaryOperator op) => op switch
    {
        BinaryOperator.Subtract => "subtraction",
        BinaryOperator.Divide => "division",
        _ => "power",
    };
}
