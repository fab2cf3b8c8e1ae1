using System.Diagnostics;
using ClassKit.CellFormulas.Syntax;
using ClassKit.Grading.Findings.Edits;

namespace ClassKit.Wording.Answers;

/// <summary>What one edit looks like on the student's sheet: the rest of a sentence that begins with “It looks as if”.</summary>
internal static class EditWords
{
    /// <summary>What happened, without the formulas.</summary>
    public static string What(KeyEdit edit, SheetTerms sheet) => edit switch
    {
        KeyEdit.OtherCell { IsWhole: true } => $"the percentage was taken of {sheet.Term(edit.Written)}, and not of {sheet.Term(edit.Right)}",
        KeyEdit.OtherCell => $"{sheet.Term(edit.Written)} was used in the place of {sheet.Term(edit.Right)}",
        KeyEdit.LeftOut(_, _, var term, var operation) => LeftOut(sheet.Term(term), operation),
        KeyEdit.OtherOperation(_, _, var belongs, var used) => $"you {Did(used)} where the method {Does(belongs)}",
        KeyEdit.TurnedRound(_, _, var operation) => $"the {Noun(operation)} is the other way round",
        KeyEdit.CountedTwice(_, _, var term) => $"{sheet.Term(term)} came in twice",
        KeyEdit.TakenIn(_, _, var term, var operation) => TakenIn(sheet.Term(term), operation),
        KeyEdit.OtherBrackets => "brackets are missing, or stand around something else",
        KeyEdit.ShareForRest => ShareForRest(edit),
        KeyEdit.ShareOfOtherEnd => ShareOfOtherEnd(edit),
        KeyEdit.Inverse => "the result is upside down",
        KeyEdit.OtherUnit { From: "%" } => $"{sheet.Term(edit.Right)} was changed by a factor of 100: a cell that shows percent holds the fraction already",
        KeyEdit.OtherUnit(_, _, var from, var to) => $"{sheet.Term(edit.Right)} was turned from {from} into {to}, which this formula does not need",
        KeyEdit.OtherConstant => $"{edit.Written} was taken for {edit.Right}",
        KeyEdit.OtherSign => "the result has the opposite sign",
        KeyEdit.OtherRounding => edit.Right.StartsWith("ROUND", StringComparison.Ordinal) ? "the result was not rounded as the method rounds it" : "something was rounded on the way",
        _ => throw new UnreachableException($"No words for {edit}."),
    };

    /// <summary>True if the words name all that differs, so that the two formulas add nothing.</summary>
    public static bool SaysAll(KeyEdit edit) => edit is KeyEdit.OtherCell or KeyEdit.OtherConstant;

    /// <summary>The names that the words have with what stands beside their cells.</summary>
    public static IReadOnlyList<string> Named(KeyEdit edit) => edit switch
    {
        KeyEdit.OtherCell => [edit.Written, edit.Right],
        KeyEdit.LeftOut(_, _, var term, _) => [term],
        KeyEdit.CountedTwice(_, _, var term) => [term],
        KeyEdit.TakenIn(_, _, var term, _) => [term],
        KeyEdit.OtherUnit => [edit.Right],
        _ => [],
    };

    private static string LeftOut(string term, BinaryOperator operation) => operation switch
    {
        BinaryOperator.Subtract => $"{term} was not taken off",
        BinaryOperator.Divide => $"the division by {term} was left out",
        BinaryOperator.Power => $"the power {term} was left out",
        BinaryOperator.Multiply => $"the factor {term} was left out",
        _ => $"{term} was left out",
    };

    private static string TakenIn(string term, BinaryOperator operation) => operation switch
    {
        BinaryOperator.Subtract => $"{term} was taken off as well",
        BinaryOperator.Divide => $"you divided by {term} as well",
        BinaryOperator.Multiply => $"you multiplied by {term} as well",
        _ => $"{term} was added as well",
    };

    private static string ShareForRest(KeyEdit edit) => (edit.Right, edit.Written) switch
    {
        (_, ['1', '-', ..]) => "you worked with what is left of the whole, where the share itself is meant",
        (_, ['1', '+', ..]) => "you worked with the whole and the share together, where the share itself is meant",
        (['1', '-', ..], _) => "you worked with the share itself, where what is left of the whole is meant",
        _ => "you worked with the share alone, where the whole together with it is meant",
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
