using System.Diagnostics;
using ClassKit.CellFormulas.Syntax;
using ClassKit.Wording.Mending;

namespace ClassKit.Wording.Answers;

/// <summary>What stands in somebody's own formula otherwise than it should: the rest of a sentence that begins with “It looks as if”.</summary>
internal static class OwnChangeWords
{
    /// <summary>What happened.</summary>
    /// <param name="change">What is to be changed.</param>
    /// <param name="sheet">The student's sheet.</param>
    public static string What(OwnChange change, SheetTerms sheet) =>
        change switch
        {
            OwnChange.Sign(var term, var used, var belongs) =>
                $"{EditWords.Done(Term(term, sheet), used, sheet)}, where {EditWords.Needed(belongs, sheet)}",
            OwnChange.Brackets => EditWords.OtherBrackets,
            OwnChange.Negated => "only the sign is wrong",
            OwnChange.OtherLeaf(var written, var right)
                when written is Flat.Leaf { Node: NameNode } && right is Flat.Leaf { Node: NameNode } =>
                $"{Term(written, sheet)} was used instead of {Term(right, sheet)}",
            OwnChange.OtherLeaf(var written, var right) => $"{Term(written, sheet)} stands where {Term(right, sheet)} belongs",
            OwnChange.Swapped(var one, var other) => $"{Term(one, sheet)} and {Term(other, sheet)} have changed places",
            OwnChange.Turned(var operation, { } first, { } last)
                when operation != BinaryOperator.Power && IsShort(first) && IsShort(last) => operation == BinaryOperator.Subtract
                ? $"{Term(last, sheet)} was subtracted from {Term(first, sheet)}, and not the other way round"
                : $"{Term(first, sheet)} was divided by {Term(last, sheet)}, and not the other way round",
            OwnChange.Turned(var operation, _, _) => $"the {EditWords.Noun(operation)} is the other way round",
            OwnChange.TakenIn(var term, var used, > 0) taken =>
                $"{EditWords.Done(Term(term, sheet), used, sheet)} {(taken.Beside == 1 ? "twice" : "once too often")}",
            OwnChange.TakenIn(var term, var used, _) =>
                $"{EditWords.Done(Term(term, sheet), used, sheet)}, which the method does not do there",
            OwnChange.LeftOut(var term, var belongs, var beside, IsFirst: true, _) =>
                $"{Term(term, sheet)} is missing, {(belongs == BinaryOperator.Divide ? $"which has to be divided by {Term(beside, sheet)}" : $"from which {Term(beside, sheet)} has to be subtracted")}",
            OwnChange.LeftOut(var term, var belongs, _, _, var isElsewhere) =>
                $"{EditWords.Undone(Term(term, sheet), belongs, sheet)}{(isElsewhere ? " in one of the places where it belongs" : "")}",
            OwnChange.Share(Flat.Leaf written, _) share => Text(share.Right).StartsWith("1-", StringComparison.Ordinal)
                ? $"{sheet.You} used {Term(written, sheet)} itself, where {sheet.You} need 1 minus that share: what is left without it"
                : $"{sheet.You} used {Term(written, sheet)} alone, where {sheet.You} need 1 plus that share: the whole and the share on top of it",
            OwnChange.Share(var written, Flat.Leaf right) => Text(written).StartsWith("1-", StringComparison.Ordinal)
                ? $"{sheet.You} subtracted {Term(right, sheet)} from 1, which the method does not do"
                : $"{sheet.You} added 1 to {Term(right, sheet)}, which the method does not do",
            OwnChange.Share(var written, var right) => Text(written).StartsWith("1-", StringComparison.Ordinal)
                ? $"{Term(written, sheet)} was used, what is left without the share, where the whole with it belongs"
                : $"{Term(written, sheet)} was used, the whole and a share on top of it, where what is left without the share belongs",
            OwnChange.Rounded(var call) => $"the method is right, but {sheet.Cells(Text(call))} rounds on the way",
            OwnChange.Everywhere(var written, var right, var times) =>
                $"{Term(written, sheet)} was used in {(times == 2 ? "both" : $"all {times}")} places where {sheet.Quoted(Text(right))} belongs",
            OwnChange.Exchanged(var term, var used, var right, var belongs) when used == belongs =>
                $"{Term(term, sheet)} stands where {Term(right, sheet)} belongs",
            OwnChange.Exchanged(var term, var used, var right, var belongs) =>
                $"{EditWords.Done(Term(term, sheet), used, sheet)}, where {sheet.You} need to {ToDo(belongs, Term(right, sheet))}",
            OwnChange.TooFar(var factor, var used, var only) =>
                $"{EditWords.Done(Term(factor, sheet), used, sheet)} more than it belongs to: that goes with {Term(only, sheet)} alone",
            OwnChange.OtherPiece(var written, var right) => $"{sheet.Quoted(Text(written))} stands where {Term(right, sheet)} belongs",
            _ => throw new UnreachableException($"No words for {change}."),
        };

    private static string ToDo(BinaryOperator operation, string term) =>
        operation switch
        {
            BinaryOperator.Add => $"add {term}",
            BinaryOperator.Subtract => $"subtract {term}",
            BinaryOperator.Multiply => $"multiply by {term}",
            _ => $"divide by {term}",
        };

    private static bool IsShort(Flat term) => term.Leaves().Count() <= 2;

    private static string Term(Flat term, SheetTerms sheet) => sheet.Piece(Text(term));

    private static string Text(Flat term) => term.Text();
}
