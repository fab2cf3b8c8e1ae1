using ClassKit.Exercises;

namespace ClassKit.Grading;

/// <summary>What is said of workbooks from other deals.</summary>
public static class OtherDealWords
{
    /// <summary>What a workbook is, as a noun: “follow-up practice, deal K7M-4RX9”.</summary>
    public static Sentence What(OtherDeal other)
    {
        ArgumentNullException.ThrowIfNull(other);
        Sentence what = other.Kind switch
        {
            OtherDealKind.OfTheClass => "another deal of this class",
            OtherDealKind.FollowUp => "follow-up practice",
            OtherDealKind.Practice => "practice that is not handed in",
            OtherDealKind.Rehearsal => "a rehearsal",
            OtherDealKind.GradedWork => "the graded work and not its follow-up",
            OtherDealKind.Lesson => (Sentence)$"another lesson, “{new TypedMention(other.Lesson ?? "")}”",
            OtherDealKind.Class => (Sentence)$"another class, “{new TypedMention(other.Cohort ?? "")}”",
            OtherDealKind.Unmarked => "an older or unknown deal",
        };
        return other.Code is { } code ? (Sentence)$"{what}, deal {code}" : what;
    }

    /// <summary>Why a workbook was not graded, in words that can be forwarded to the student.</summary>
    /// <param name="other">What it is.</param>
    /// <param name="dealt">The deal that was graded.</param>
    internal static Sentence Why(OtherDeal other, DealtClass dealt)
    {
        Sentence found = other switch
        {
            { Kind: OtherDealKind.Unmarked } when dealt.Identity is null => "Most of its numbers are not those that were dealt here",
            { Kind: OtherDealKind.Unmarked } => "It carries no deal code, and most of its numbers are not those that were dealt here",
            _ => (Sentence)$"This workbook is from {What(other)}",
        };
        var wanted = dealt.Identity is { Code: var code }
            ? $"the workbook for “{dealt.LessonTitle}” with the deal code {code} on its first sheet"
            : $"the workbook for “{dealt.LessonTitle}” with the numbers that you were given for it";
        return $"{found}, so it was not graded and cost no points. Please hand in {wanted}.";
    }

    /// <summary>The sentence for a class of which most handed in another deal's workbooks; null for any other class.</summary>
    public static string? Mostly(ClassGrades grades)
    {
        ArgumentNullException.ThrowIfNull(grades);
        var others = grades.Files.Select(file => file.Other).OfType<OtherDeal>().ToList();
        var own = grades.Files.Count(file => file.Fate is FileFate.Graded or FileFate.OtherVersion);
        if (others.Count <= own) return null;
        var most = others.GroupBy(What).OrderByDescending(kind => kind.Count()).First().Key;
        var here = grades.Dealt.Identity is { } identity ? $"deal {identity.Code}, seed {grades.Dealt.Seed}" : $"seed {grades.Dealt.Seed}";
        return $"{others.Count} of {others.Count + own} workbooks are not from this deal ({here}) but mostly from {most}: they were not graded. Is this the folder that was dealt to these students?";
    }
}
