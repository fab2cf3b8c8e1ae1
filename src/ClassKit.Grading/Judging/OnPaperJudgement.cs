using ClassKit.Grading.Findings;
using ClassKit.Grading.Results;

namespace ClassKit.Grading.Judging;

/// <summary>What paper changes of a judgement.</summary>
internal static class OnPaperJudgement
{
    /// <summary>
    /// The judgement of an answer on paper: no cell waits for a percentage, and working that the instructor saw shows the method as a formula
    /// would.
    /// </summary>
    public static Judgement With(PaperWorking working, Judgement judgement)
    {
        judgement = judgement with { Beside = [.. judgement.Beside.Where(finding => finding is not AnswerFinding.HundredfoldPercent)] };
        if (working == PaperWorking.NotSeen)
            return judgement;
        judgement = judgement with { MethodShown = true, WorkingSeen = true };
        return judgement switch
        {
            { Outcome: Outcome.ValueOnly } => judgement with { Outcome = Outcome.Sound, Finding = new AnswerFinding.Right() },
            { Finding: AnswerFinding.FollowsThrough follows } => judgement with { Finding = follows with { MethodShown = true } },
            _ => judgement,
        };
    }
}
