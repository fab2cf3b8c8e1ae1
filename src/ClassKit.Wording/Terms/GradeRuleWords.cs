using ClassKit.Terms.Rules;

namespace ClassKit.Wording.Terms;

/// <summary>What a rule says, in words.</summary>
public static class GradeRuleWords
{
    /// <summary>How results are rounded.</summary>
    public static string Of(Rounding rounding) =>
        rounding.Step is { } step ? $"rounded to {ShareWords.OfPercent(step)}, the middle {Of(rounding.Tie)}" : "not rounded";

    /// <summary>Where a result in the middle goes.</summary>
    public static string Of(TieRule tie) =>
        tie switch
        {
            TieRule.Up => "up",
            TieRule.Down => "down",
            TieRule.Even => "to the even step",
        };

    /// <summary>What sittings, absences and lateness come to.</summary>
    public static IEnumerable<string> Marks(GradeRule rule)
    {
        yield return (rule.Resit.Choice, rule.Resit.AtMost) switch
        {
            (ResitChoice.Replaces, 1) => "A resit replaces what was there.",
            (ResitChoice.Replaces, var most) => $"A resit replaces what was there, and earns at most {ShareWords.Of(most)}.",
            (ResitChoice.Better, 1) => "Of several sittings the better one counts.",
            (ResitChoice.Better, var most) => $"Of several sittings the better one counts; a resit earns at most {ShareWords.Of(most)}.",
        };
        yield return rule.Absence switch
        {
            AbsenceRule.Zero => "An absence that nothing excuses counts as no points.",
            AbsenceRule.LeftOut => "An absence is left out, as excused work is.",
        };
        if (rule.LateOff > 0)
            yield return $"Late work loses {ShareWords.Of(rule.LateOff)} of its points, unless its own marking took something off.";
        yield return rule.SecondMarker switch
        {
            MarkerRule.Mean => "Where two marked the same work, the mean of both counts.",
            MarkerRule.First =>
                "Where two marked the same work, the first marker's marks count; of whom only the second marked, the second's.",
        };
        yield return "Excused work leaves its weight to the rest.";
        if (rule.Lines.Any(line => line.Criterion is not null))
            yield return "A line on a criterion asks what was shown: its mean over all work in which it was marked, dropped and late work too, as it was marked. Absences count against a line on a whole category alone.";
    }
}
