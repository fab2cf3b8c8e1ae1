using System.Diagnostics;
using System.Globalization;
using ClassKit.CellFormulas.Values;
using ClassKit.Exercises.Authoring;
using ClassKit.Exercises.Texts;
using ClassKit.Grading.Answers;
using ClassKit.Grading.Findings;
using ClassKit.Grading.Results;
using ClassKit.Wording.Counts;
using ClassKit.Wording.Formulas;
using ClassKit.Wording.Quoting;

namespace ClassKit.Wording.Answers;

/// <summary>What a student is told of an answer: what was found and the next step, one sentence or two for each finding.</summary>
public static class FindingWords
{
    private const string LetTheFormatRound = "Keep all digits in the cell and let its format do the rounding.";
    private const string RoundAtTheEnd = "Point to its cell, which holds all digits, and round at the end.";

    /// <summary>Everything that was found of an answer, what decided first; empty if nobody judged it.</summary>
    public static string Of(AnswerGrade answer)
    {
        ArgumentNullException.ThrowIfNull(answer);
        return string.Join(' ', Told(answer).Select(finding => Of(finding, answer)).Concat(PaperWords.Beside(answer)));
    }

    /// <summary>
    /// The same where it says more than the outcome does beside which it stands: whose outcome says all has none.
    /// </summary>
    public static string BeyondOutcome(AnswerGrade answer)
    {
        ArgumentNullException.ThrowIfNull(answer);
        return answer.Findings.All(finding =>
            finding
                is AnswerFinding.Right { Formula: null }
                    or AnswerFinding.RightTyped
                    or AnswerFinding.RightInText
                    or AnswerFinding.Empty
                    or AnswerFinding.NoWorkbook
        )
            ? string.Join(' ', PaperWords.Beside(answer))
            : Of(answer);
    }

    private static string Of(AnswerFinding finding, AnswerGrade answer) =>
        finding is AnswerFinding.TypedFromRounded(var decimals) ? FromRounded(decimals, EarlierUnit(answer))
        : finding is AnswerFinding.RoundsWithin rounds ? RoundsWithinWords.Of(rounds, answer)
        : finding is AnswerFinding.NearMiss miss ? NearMissWords.Of(miss, answer.Exercise, answer.Part, answer.Formula)
        : finding is AnswerFinding.NotRight wrong && answer is { Part.Choice: null, Paper: null } ? UnseenWords.Of(answer, wrong)
        : finding is AnswerFinding.Right { Formula: not null } near && NearEnoughWords.Of(near, answer) is { } nearly ? nearly
        : finding is AnswerFinding.OffByTens tens && TensWords.Of(tens, answer) is { } told ? told
        : finding is AnswerFinding.HundredfoldPercent(var held) ? Hundredfold(held, answer)
        : (answer.Paper is null ? null : PaperWords.Of(finding, answer.Part)) ?? Of(finding, answer.Part);

    /// <summary>How a percentage is written is no help where it is wrong.</summary>
    private static IEnumerable<AnswerFinding> Told(AnswerGrade answer) =>
        answer.Findings.Where(
            (finding, at) =>
                at == 0
                || finding is not AnswerFinding.HundredfoldPercent
                || answer.Outcome is not (Outcome.Incorrect or Outcome.Misconception)
        );

    /// <summary>A formula is not to be typed over.</summary>
    private static string Hundredfold(double held, AnswerGrade answer) =>
        answer.Formula is null
            ? TypedAsPercent(held)
            : string.Create(
                CultureInfo.InvariantCulture,
                $"Your cell holds {held:0.####}, which other cells take for {Unit.Percent.Shown(held):0.####} %. Leave the step to percent (*100, or a % sign) out of the formula: the cell's format shows {Unit.Percent.Held(held):0.######} as {held:0.####} % by itself."
            );

    private static string TypedAsPercent(double held) =>
        string.Create(
            CultureInfo.InvariantCulture,
            $"Your cell holds {held:0.####}, which other cells take for {Unit.Percent.Shown(held):0.####} %: for {held:0.####} % a cell holds {Unit.Percent.Held(held):0.######}, so type the sign, {held:0.####}%."
        );

    private static string Of(AnswerFinding finding, Part part) =>
        finding switch
        {
            AnswerFinding.Right => "Right, and your formula follows the sheet's numbers.",
            AnswerFinding.RightTyped => part.FormulaAsked
                ? "The number is right. A formula was asked for, one that works from the given cells, so the method's share is missing."
                : "Right.",
            AnswerFinding.RightInText => "The number is right.",
            AnswerFinding.NotFollowing(var typed, var varies) => NotFollowing(typed, varies),
            AnswerFinding.FollowsThrough(var from, _) when part.Choice is not null =>
                $"It follows rightly from your own {Parts(from)}, where the slip was counted and is not counted again here.",
            AnswerFinding.FollowsThrough(var from, var methodShown) => methodShown || !part.FormulaAsked
                ? $"The method is right. It carries on the slip in {Parts(from)}, which was counted there and not again here."
                : $"The number follows rightly from your own {Parts(from)}, where the slip was counted. A formula was asked for, so the method's share is missing.",
            AnswerFinding.Waits(var missing) =>
                $"Your formula is right; it only lacks a number in {Parts(missing)} to work from. That was counted there and not again here.",
            AnswerFinding.WrongTurn(var misconception) => misconception.Words,
            AnswerFinding.OtherUnit(var unit) => $"Your answer is right in {unit}; this cell asks for {part.Unit}.",
            AnswerFinding.OffByTens(var factor, var isTooLarge) => string.Create(
                CultureInfo.InvariantCulture,
                $"Your answer is {(isTooLarge ? $"{factor} times" : $"1/{factor} of")} what it should be: check the units and the percent sign before the method."
            ),
            AnswerFinding.RoundsAnswer(var step, var direction) =>
                $"The method is right, but the answer is rounded to {RoundingWords.Of(step, direction, part.Unit)}, which is more than this part allows. {(RoundsWithinWords.Needed(part) is { } needed ? $"The method rounds with {needed}: look at the worked solution." : LetTheFormatRound)}",
            AnswerFinding.RoundsEarlier(var earlier, var step, var direction) =>
                $"The method is right, but an earlier answer was rounded to {RoundingWords.Of(step, direction, earlier.Unit)} before it was used, and that carries through. {RoundAtTheEnd}",
            AnswerFinding.TypedRounded(var decimals) =>
                $"The number is right but for rounding: it is rounded to {RoundingWords.Of(decimals, part.Unit)}, which is more than this part allows. {(part.FormulaAsked ? "A formula keeps all digits, and the cell's format rounds what it shows." : "Write more of its digits.")}",
            AnswerFinding.TypedFromRounded(var decimals) => FromRounded(decimals, ""),
            AnswerFinding.RoundsWithin(var written, _, _) =>
                $"The method is right, but {written} rounds on the way, and that carries through. {RoundAtTheEnd}",
            AnswerFinding.NotRight when part.Choice is not null => "Another one is right: its worked solution says why.",
            AnswerFinding.NotRight => NotRight(part),
            AnswerFinding.ErrorValue found => ErrorValue(found),
            AnswerFinding.Empty(var cell) => $"Nothing was entered in {cell}.",
            AnswerFinding.NoWorkbook => "No workbook could be read.",
            AnswerFinding.NotEvaluated(var why) =>
                $"We could not work out this formula ({ObstacleWords.Of(why)}). It costs you nothing; your instructor will look at it.",
            AnswerFinding.BrokenFormula or AnswerFinding.NamesNoCell or AnswerFinding.LacksEqualsSign or AnswerFinding.NoNumber =>
                UnreadableWords.Of(finding, part),
            AnswerFinding.MakesText(var text) =>
                $"Your formula makes text of it (“{Quoted.Short(text)}”), and other cells cannot work with text. Let the formula give the number alone; the unit stands beside the cell.",
            AnswerFinding.HundredfoldPercent(var held) => TypedAsPercent(held),
            AnswerFinding.Impossible(var value) =>
                $"But {ResultText.Of(part, value)} cannot be: whenever a result is impossible, something before it is wrong.",
            AnswerFinding.NoOption(var text, var options) =>
                $"“{Quoted.Short(text)}” is none of the letters A to {(char)('A' + options - 1)}. Choose one from the cell's list, or type it by itself.",
            AnswerFinding.OptionInWords(var text) =>
                $"“{Quoted.Short(text)}” is more than a letter. Your instructor reads which one you meant; until then it counts neither for nor against you. Next time type the letter by itself.",
            AnswerFinding.Wrote(var length) => length > TypedWords.Most
                ? $"Your instructor reads this and gives the points; until then it counts neither for nor against you. Of its {length} characters the first {TypedWords.Most} are shown here, and the instructor has your workbook."
                : "Your instructor reads this and gives the points; until then it counts neither for nor against you.",
            AnswerFinding.StoodAsText =>
                "The cell held the formula as text, so you saw no number; it was worked out here as though you had entered it. Set the cell's format to General before you type.",
            _ => throw new UnreachableException($"No words for {finding}."),
        };

    /// <summary>
    /// No known wrong turn gives this number, so what can be said is what was asked, and where to look for the place at which the ways
    /// part.
    /// </summary>
    private static string NotRight(Part part) =>
        $"This is not the right number for “{part.Ask.TrimEnd('.')}”, and we could not see how it came about. Lay your steps beside the worked solution, number by number.";

    /// <summary>Several roundings may come to one number: it is no more than what it looks like.</summary>
    private static string FromRounded(int decimals, Unit unit) =>
        $"From your number, it looks as if an earlier answer was rounded to {RoundingWords.Of(decimals, unit)} before it was used, and that carries through. {RoundAtTheEnd}";

    /// <summary>Of the earlier answers that the part builds on; empty where they have several.</summary>
    private static Unit EarlierUnit(AnswerGrade answer) =>
        answer
            .Exercise.Parts.TakeWhile(other => other.Id != answer.Part.Id)
            .Where(other => answer.Part.Key.Names.Contains(other.Id, StringComparer.OrdinalIgnoreCase))
            .Select(other => other.Unit)
            .Distinct()
            .ToList()
            is [var only]
            ? only
            : Unit.None;

    private static string NotFollowing(IReadOnlyList<TypedGiven> typed, bool varies)
    {
        const string begin = "The number is right for your sheet, but the formula does not follow when the given numbers change: ";
        if (typed.Count == 0)
            return begin
                + (
                    varies
                        ? "with others it comes to something else than the right method does."
                        : "it comes to the same number whatever they are."
                );
        var found = typed.Select(one => $"{GivenText.Of(one.Given, one.Dealt)}, where the sheet has {one.Given.Label} in {one.Cell}");
        return $"{begin}you typed {string.Join(", and ", found)}. Point to {(typed.Count == 1 ? "that cell" : "those cells")} instead.";
    }

    private static string ErrorValue(AnswerFinding.ErrorValue found) =>
        found switch
        {
            { By: { } cell } => $"Your formula comes to {CellErrorText.Of(found.Error)}. {UnusableCellWords.Of(cell)}",
            { Error: CellError.DivideByZero } =>
                "Your formula comes to #DIV/0!: it divides by zero or by an empty cell. Check which cell stands below the division.",
            { Error: CellError.Value } => "Your formula comes to #VALUE!: something in it is words where a number is needed.",
            { Error: CellError.Reference } => "Your formula comes to #REF!: it points at a cell that is not there.",
            { Error: CellError.Name } => "Your formula comes to #NAME?: a name in it is not known. Check its spelling.",
            _ => $"Your formula comes to {CellErrorText.Of(found.Error)}, which is not a number.",
        };

    internal static string Parts(IReadOnlyList<Part> parts) =>
        Counted.Noun(parts.Count, "part") + " " + string.Join(" and ", parts.Select(part => $"“{part.Ask.TrimEnd('.', '?')}”"));
}
