using ClassKit.Exercises.Dealing;
using ClassKit.Exercises.Identity;
using ClassKit.Grading.Findings;

namespace ClassKit.Grading.Intake;

/// <summary>Finds out which other deal a workbook is from.</summary>
internal static class OtherDeals
{
    /// <summary>What a workbook is that was found not to be from this deal.</summary>
    public static OtherDeal In(DealtClass dealt, DealMarks marks)
    {
        var code = marks.Codes.FirstOrDefault(code => code != dealt.Identity?.Code);
        return new(KindOf(dealt, marks, code), code, marks.Lesson, marks.Cohort);
    }

    private static OtherDealKind KindOf(DealtClass dealt, DealMarks marks, string? code)
    {
        var isFollowUp = marks.Purpose == DealPurpose.FollowUp || marks.Lesson == FollowUpTitle.Of(dealt.LessonTitle);
        if (isFollowUp && dealt.Purpose != DealPurpose.FollowUp)
            return OtherDealKind.FollowUp;
        if (marks.Purpose == DealPurpose.Rehearsal && dealt.Purpose != DealPurpose.Rehearsal)
            return OtherDealKind.Rehearsal;
        if (marks.Purpose == DealPurpose.Practice && dealt.Purpose != DealPurpose.Practice)
            return OtherDealKind.Practice;
        if (marks.Lesson is { } lesson && FollowUpTitle.Of(lesson) == dealt.LessonTitle)
            return OtherDealKind.GradedWork;
        if (marks.Lesson is not null && marks.Lesson != dealt.LessonTitle)
            return OtherDealKind.Lesson;
        if (marks.Cohort is not null && marks.Cohort != dealt.Cohort)
            return OtherDealKind.Class;
        return code is null ? OtherDealKind.Unmarked : OtherDealKind.OfTheClass;
    }
}
