using System.Diagnostics;
using ClassKit.Exercises.Authoring;
using ClassKit.Exercises.Texts;
using ClassKit.Grading.Regrading;
using ClassKit.Wording.Answers;
using ClassKit.Wording.Counts;
using ClassKit.Wording.Marking;
using ClassKit.Wording.Outcomes;

namespace ClassKit.Wording.Regrading;

/// <summary>Why grades differ from those on record, each reason a short clause.</summary>
public static class CauseWords
{
    /// <summary>Why all of a student's work counts otherwise.</summary>
    public static string Of(StudentCause cause) =>
        cause switch
        {
            StudentCause.NotOnRecord => "not on record before",
            StudentCause.OtherFile(var now, var before) => $"{now ?? "no file"} is graded now, {before ?? "none"} was before",
            StudentCause.OtherLateness(null) => "no longer late",
            StudentCause.OtherLateness({ } late) => $"{LateWords.Of(late)} late, {Percent.Of(late.Off)} off",
            StudentCause.NothingGraded => "nothing is graded any more",
            StudentCause.OtherTotal({ BestExercises: null, PointsAtMost: null }, _) => "everything counts now",
            StudentCause.OtherTotal(var rule, var uncounted) =>
                $"{TotalRuleWords.Of(rule).TrimEnd('.')} now{(uncounted.Count > 0 ? $": not {string.Join(", ", uncounted)}" : "")}",
            _ => throw new UnreachableException($"No words for {cause}."),
        };

    /// <summary>Why an answer is judged or credited otherwise.</summary>
    /// <param name="cause">The reason.</param>
    /// <param name="part">What is asked.</param>
    public static string Of(AnswerCause cause, Part part) =>
        cause switch
        {
            AnswerCause.NotOnRecord => "no answer on record before",
            AnswerCause.OtherKey(var now, var before) =>
                $"the key gives {ResultText.Of(part, now)}, and gave {ResultText.Of(part, before)}",
            AnswerCause.OtherOutcome(var now, var before) => $"{OutcomeText.Brief(now)}, was {OutcomeText.Brief(before)}",
            AnswerCause.Corrected(var reason) => $"corrected: {reason}",
            AnswerCause.NotCorrectedAnyMore(var reason) => $"no longer corrected ({reason})",
            AnswerCause.CorrectedOtherwise => "the correction sets other points",
            AnswerCause.OtherShare(var outcome, var now, var before) =>
                $"{OutcomeText.Brief(outcome)} earns {Share(now)}, and earned {Share(before)}",
            _ => throw new UnreachableException($"No words for {cause}."),
        };

    private static string Share(decimal? share) => share is { } known ? Percent.Of(known) : "nothing";
}
