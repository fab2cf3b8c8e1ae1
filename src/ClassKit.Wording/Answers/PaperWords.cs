using ClassKit.Exercises.Authoring;
using ClassKit.Grading.Findings;
using ClassKit.Grading.Results;
using ClassKit.Wording.Quoting;

namespace ClassKit.Wording.Answers;

/// <summary>What a student is told of an answer on paper, where no cell and no formula can be spoken of.</summary>
internal static class PaperWords
{
    private const string KeepDigits = "Keep all digits on the way and round at the end, no further than asked.";

    /// <summary>The sentences of a finding; null where those for a workbook do as well.</summary>
    public static string? Of(AnswerFinding finding, Part part) =>
        finding switch
        {
            AnswerFinding.Right => "Right, and your working shows the method.",
            AnswerFinding.RightTyped when part.FormulaAsked =>
                "The number is right. Working that shows the method was not found with it, so the method's share is missing.",
            AnswerFinding.FollowsThrough(var from, false) when part.FormulaAsked =>
                $"The number follows rightly from your own {FindingWords.Parts(from)}, where the slip was counted. Working that shows the method was not found with it, so the method's share is missing.",
            AnswerFinding.OtherUnit(var unit) => $"Your answer is right in {unit}; it is asked for in {part.Unit}.",
            AnswerFinding.TypedRounded(var decimals) =>
                $"The number is right but for rounding: it is rounded to {RoundingWords.Of(decimals, part.Unit)}, which is more than this part allows. {KeepDigits}",
            AnswerFinding.TypedFromRounded(var decimals) =>
                $"The number is what comes of rounding an earlier answer to {RoundingWords.Of(decimals, part.Unit)} before it is used, and that carries through. {KeepDigits}",
            AnswerFinding.Empty => "No answer is written for this part.",
            AnswerFinding.NoNumber(_, var text, _, _, _) => $"“{Quoted.Short(text)}” is no number that could be read.",
            AnswerFinding.NoOption(var text, var options) =>
                $"“{Quoted.Short(text)}” is none of the letters A to {(char)('A' + options - 1)}.",
            AnswerFinding.OptionInWords(var text) =>
                $"“{Quoted.Short(text)}” is more than a letter. Your instructor reads which one you meant; until then it counts neither for nor against you.",
            _ => null,
        };

    /// <summary>What is said beside the findings: working that shows the method where the number does not.</summary>
    public static IEnumerable<string> Beside(AnswerGrade answer)
    {
        if (answer is { Paper: PaperWorking.ShowsMethod, Part.FormulaAsked: true, Outcome: not (Outcome.Sound or Outcome.FollowThrough) })
            yield return "Your working shows the method, so the method's share is yours.";
    }
}
