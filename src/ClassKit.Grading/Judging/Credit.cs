using ClassKit.Exercises.Authoring;
using ClassKit.Exercises.Marking;
using ClassKit.Grading.Judging.Slips;
using ClassKit.Grading.Results;

namespace ClassKit.Grading.Judging;

/// <summary>Turns a judgement into points under a marking scheme.</summary>
internal static class Credit
{
    /// <summary>What the answer earned, to a hundredth of a point, ties away from zero.</summary>
    public static decimal Points(MarkingScheme marking, Part part, Judgement judgement) =>
        Math.Round(part.Points * Earned(marking, part, judgement), 2, MidpointRounding.AwayFromZero);

    /// <summary>What the answer could earn: nothing where we could not judge, so that it never counts against the student.</summary>
    public static decimal OutOf(Part part, Judgement judgement) => judgement.Outcome == Outcome.Unsupported ? 0 : part.Points;

    /// <summary>Working that shows the method has the method's share at least, whatever number came of it.</summary>
    private static decimal Earned(MarkingScheme marking, Part part, Judgement judgement)
    {
        var share = Share(marking, part, judgement);
        return judgement.WorkingSeen && part.FormulaAsked ? Math.Max(share, 1 - marking.AccuracyShare) : share;
    }

    private static decimal Share(MarkingScheme marking, Part part, Judgement judgement)
    {
        var methodOrNot = judgement.MethodShown || !part.FormulaAsked ? 1 : marking.AccuracyShare;
        return judgement.Outcome switch
        {
            Outcome.Sound => 1,
            Outcome.ValueOnly => methodOrNot,
            Outcome.FollowThrough => marking.FollowThroughShare * methodOrNot,
            // Among a few letters a wrong one is as likely a guess, and a known wrong turn no work that could earn a share.
            Outcome.Misconception => part.Choice is null ? marking.MisconceptionShare : 0,
            Outcome.Incorrect when judgement.Slip is { } slip => ShareOf(marking, slip, methodOrNot),
            Outcome.Incorrect or Outcome.Blank or Outcome.Unreadable or Outcome.Unsupported => 0,
        };
    }

    private static decimal ShareOf(MarkingScheme marking, SlipKind slip, decimal methodOrNot) =>
        slip switch
        {
            SlipKind.Unit => marking.UnitSlipShare * methodOrNot,
            SlipKind.Rounding => marking.RoundingSlipShare * methodOrNot,
            // A formula near the key is a wrong method, and is worth what a known one is unless the scheme says otherwise.
            SlipKind.NearMiss => marking.NearMissShare ?? marking.MisconceptionShare,
        };
}
