using System.Diagnostics;
using ClassKit.Grading.Findings;
using ClassKit.Wording.Quoting;

namespace ClassKit.Wording.Answers;

/// <summary>What is told of a cell that a formula points at and cannot use, and where to point instead.</summary>
internal static class UnusableCellWords
{
    public static string Of(UnusableCell cell) =>
        cell switch
        {
            { Kind: UnusableCellKind.Itself } => $"It points at {cell.Cell}, its own cell. Take {cell.Cell} out of it.",
            { Kind: UnusableCellKind.InTurn } =>
                $"It uses {cell.Cell}, and {cell.Cell} is worked out from it in turn: one of the two must do without the other.",
            { Kind: UnusableCellKind.Empty } => $"{cell.Cell}, which it uses, is empty: look which cell you meant.",
            { Kind: UnusableCellKind.Words, Text: { } words, Beside: { } number } =>
                $"{cell.Cell} holds words (“{Quoted.Short(words)}”); the number beside them stands in {number}.",
            { Kind: UnusableCellKind.Words, Text: { Text: [>= '0' and <= '9', ..] } typed } =>
                $"{cell.Cell} holds “{Quoted.Short(typed)}”, which a spreadsheet takes for words. Type the number alone there.",
            { Kind: UnusableCellKind.Words, Text: { } words } =>
                $"{cell.Cell} holds words (“{Quoted.Short(words)}”), not a number: look which cell you meant.",
            _ => throw new UnreachableException($"No words for {cell}."),
        };
}
