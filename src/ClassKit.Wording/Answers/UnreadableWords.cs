using System.Diagnostics;
using System.Globalization;
using ClassKit.CellFormulas.Syntax;
using ClassKit.Exercises.Authoring;
using ClassKit.Grading.Findings;
using ClassKit.Grading.Findings.Quoting;
using ClassKit.Wording.Formulas;
using ClassKit.Wording.Quoting;

namespace ClassKit.Wording.Answers;

/// <summary>What is in the way where an answer is no number, and what to enter instead.</summary>
internal static class UnreadableWords
{
    private const string Retry = "Enter it again in a cell that is not formatted as text; your program then says what is wrong with it.";

    public static string Of(AnswerFinding finding, Part part) =>
        finding switch
        {
            AnswerFinding.BrokenFormula({ Kind: SyntaxFoundKind.End }, _) =>
                $"This begins like a formula and is not finished: a bracket is opened and not closed, or nothing follows its last sign. {Retry}",
            AnswerFinding.BrokenFormula(var found, var character) =>
                $"This begins like a formula but cannot be read as one, from character {character} on: there is {SyntaxWords.Of(found)}. {Retry}",
            AnswerFinding.NamesNoCell(var name) =>
                $"This begins like a formula, but {(name is null ? "it" : $"“{Quoted.Short(name)}” in it")} is no cell of this workbook. {Retry}",
            AnswerFinding.LacksEqualsSign(var text) =>
                $"“{Quoted.Short(text)}” reads like a formula, but a formula begins with =. Enter it again with = before it.",
            AnswerFinding.NoNumber no =>
                $"{InTheWay(no)} Enter {(part.FormulaAsked ? "a formula" : "a number")} without words{(part.Unit.IsNone ? "" : $"; the unit {part.Unit} stands beside the cell")}.",
            _ => throw new UnreachableException($"{finding} can be read."),
        };

    private static string InTheWay(AnswerFinding.NoNumber no)
    {
        var (text, found) = (Quoted.Short(no.Text), Seen(no.Found));
        return no.Kind switch
        {
            UnreadableKind.NoDigit => $"“{text}” is no number: there is no digit in it.",
            UnreadableKind.Word => $"“{text}” is no number we can read, because of the word “{found}” at character {no.Character}.",
            UnreadableKind.Character => $"“{text}” is no number we can read, because of the sign “{found}” at character {no.Character}.",
            UnreadableKind.SecondNumber => $"“{text}” is more than one number: “{found}” at character {no.Character} is a second one.",
            UnreadableKind.Marks =>
                $"“{text}” is no number we can read: the points and commas of “{found}” at character {no.Character} do not fit one.",
            UnreadableKind.TooLong => $"This is no number we can read: it has {no.Length} characters.",
        };
    }

    /// <summary>A character that nobody sees, by its number.</summary>
    private static string Seen(Quotation found) =>
        found.Text.Any(char.IsControl) ? string.Create(CultureInfo.InvariantCulture, $"U+{(int)found.Text[0]:X4}") : Quoted.Short(found);
}
