using ClassKit.Exercises.Dealing;
using ClassKit.Grading.Findings;
using ClassKit.Grading.Findings.Quoting;

namespace ClassKit.Grading.Intake;

/// <summary>Weighs what a workbook says of its deal. Codes decide; where there are none or several, its numbers do.</summary>
internal static class DealEvidence
{
    /// <summary>Whether a workbook is from the deal at hand.</summary>
    /// <param name="dealt">The deal at hand; without identity only numbers speak.</param>
    /// <param name="marks">What the workbook says.</param>
    /// <param name="numbers">The numbers in it.</param>
    /// <param name="owner">Whose it seems to be; null if nobody's.</param>
    public static DealOrigin Weigh(DealtClass dealt, DealMarks marks, DealtNumbers numbers, DealtStudent? owner)
    {
        if (dealt.Identity is not { Code: var own } || marks.Codes.Count == 0)
            return numbers.SpeakAgainst(owner) ? DealOrigin.Other : DealOrigin.Own;
        if (!marks.Codes.Contains(own))
            return DealOrigin.Other;
        var isPure = marks.Codes.Count == 1;
        if (!numbers.SpeakAgainst(owner))
            return isPure ? DealOrigin.Own : DealOrigin.Doubtful;
        return isPure ? DealOrigin.Doubtful : DealOrigin.Other;
    }

    /// <summary>What the instructor should know of a workbook in doubt.</summary>
    public static Flag Doubt(ReturnedName file, DealMarks marks, DealtClass dealt) =>
        new Flag.DealDoubtful(file, [.. marks.Codes.Where(code => code != dealt.Identity?.Code)], dealt.Identity?.Code);
}
