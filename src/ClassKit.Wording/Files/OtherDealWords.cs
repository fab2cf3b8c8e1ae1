using ClassKit.Grading.Findings;
using ClassKit.Notes;
using ClassKit.Wording.Quoting;

namespace ClassKit.Wording.Files;

/// <summary>What is said of workbooks from other deals.</summary>
public static class OtherDealWords
{
    /// <summary>What a workbook is, as a noun: “follow-up practice, deal K7M-4RX9”.</summary>
    public static string What(OtherDeal other)
    {
        ArgumentNullException.ThrowIfNull(other);
        var what = other.Kind switch
        {
            OtherDealKind.OfTheClass => "another deal of this class",
            OtherDealKind.FollowUp => "follow-up practice",
            OtherDealKind.Practice => "practice that is not handed in",
            OtherDealKind.Rehearsal => "a rehearsal",
            OtherDealKind.GradedWork => "the graded work and not its follow-up",
            OtherDealKind.Lesson => $"another lesson, “{ShownName.Of(other.Lesson ?? "")}”",
            OtherDealKind.Class => $"another class, “{ShownName.Of(other.Cohort ?? "")}”",
            OtherDealKind.Unmarked => "an older or unknown deal",
        };
        return other.Code is { } code ? $"{what}, deal {code}" : what;
    }

    /// <summary>Why such a workbook was not graded, in words that can be forwarded to the student.</summary>
    internal static string Why(Uncounted.OfOtherDeal why)
    {
        var found = why.Other switch
        {
            { Kind: OtherDealKind.Unmarked } when why.Code is null => "Most of its numbers are not those that were dealt here",
            { Kind: OtherDealKind.Unmarked } => "It carries no deal code, and most of its numbers are not those that were dealt here",
            var other => $"This workbook is from {What(other)}",
        };
        var wanted = why.Code is { } code
            ? $"the workbook for “{why.LessonTitle}” with the deal code {code} on its first sheet"
            : $"the workbook for “{why.LessonTitle}” with the numbers that you were given for it";
        return $"{found}, so it was not graded and cost no points. Please hand in {wanted}.";
    }

    /// <summary>Of a class of which most handed in another deal's workbooks.</summary>
    public static string Mostly(Note.OtherDeals others)
    {
        ArgumentNullException.ThrowIfNull(others);
        var here = others.Code is { } code ? $"deal {code}, seed {others.Seed}" : $"seed {others.Seed}";
        return $"{others.Others} of {others.Workbooks} workbooks are not from this deal ({here}) but mostly from {What(others.Mostly)}: they were not graded. Is this the folder that was dealt to these students?";
    }
}
