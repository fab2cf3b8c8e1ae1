using ClassKit.Exercises.Deadlines;
using ClassKit.Exercises.Dealing;
using ClassKit.Grading.Corrections;
using ClassKit.Grading.Findings;
using ClassKit.Grading.Lateness;
using ClassKit.Grading.Results;
using static ClassKit.Grading.Tests.DealtForTests;

namespace ClassKit.Grading.Tests.Lateness;

/// <summary>Late work by what a workbook says of itself. What it costs is the instructor's; the arithmetic is worked by hand.</summary>
public sealed class LateWorkTests
{
    private static readonly DueMoment Due = DueWish.Parse("2026-11-20T17:00")!.In(ClassTimeZone.Find("Europe/Paris"))!;
    private static readonly DealtClass Strict = Class with { Marking = Class.Marking with { Late = new(0.1m, 0.5m) } };

    private static StudentGrade Graded(DateTime? saved, DealtClass? dealt = null, DateTime? dated = null, DueMoment? due = null)
    {
        var book = new ReturnedBook(Ada).Answer("sum", "=flour+room+friction").Answer("temperature", "=3*want-sum");
        return LateWork
            .Mark(ClassGrader.Grade(dealt ?? Strict, [book.As("ada.xlsx") with { Modified = saved, Dated = dated }]), due ?? Due)
            .Students[0];
    }

    // Due at 16:00 UTC: clocks that show 17:00 in Paris are not past 17:00, however many seconds a program writes. Two right parts of 2 points each.
    [Theory]
    [InlineData("2026-11-20T15:59:00", null, 4.0)]
    [InlineData("2026-11-20T16:00:00", null, 4.0)]
    [InlineData("2026-11-20T16:00:59.999", null, 4.0)]
    [InlineData("2026-11-20T16:01:00", 1, 3.6)]
    [InlineData("2026-11-21T16:00:00", 1, 3.6)]
    [InlineData("2026-11-21T16:00:59", 1, 3.6)]
    [InlineData("2026-11-21T16:01:00", 2, 3.2)]
    [InlineData("2026-12-24T12:00:00", 34, 2.0)]
    public void Every_day_begun_costs_its_share_up_to_the_limit(string saved, int? days, double points)
    {
        var graded = Graded(Utc(saved));

        Assert.Equal(days, graded.Late?.Days);
        Assert.Equal((decimal)points, graded.Points);
        Assert.Equal(8, graded.OutOf);
    }

    /// <summary>Who types seconds means them.</summary>
    [Theory]
    [InlineData("2026-11-20T16:00:30", null)]
    [InlineData("2026-11-20T16:00:31", 1)]
    public void A_due_moment_with_seconds_is_over_with_its_second(string saved, int? days) =>
        Assert.Equal(
            days,
            Graded(Utc(saved), due: DueWish.Parse("2026-11-20T17:00:30")!.In(ClassTimeZone.Find("Europe/Paris"))).Late?.Days
        );

    /// <summary>
    /// A time without a zone is what some clock showed (XML Schema Part 2, 3.2.7): universal time, or that of Paris, an hour before. Late
    /// only if it is by both.
    /// </summary>
    [Theory]
    [InlineData("2026-11-20T15:30:00", false, false)]
    [InlineData("2026-11-20T16:00:30", false, false)]
    [InlineData("2026-11-20T16:30:00", false, true)]
    [InlineData("2026-11-20T17:00:59", false, true)]
    [InlineData("2026-11-20T17:01:00", true, false)]
    public void A_time_of_nobody_knows_which_clock_is_late_if_it_is_by_either(string shown, bool isLate, bool isUnclear)
    {
        var graded = Graded(DateTime.SpecifyKind(Utc(shown), DateTimeKind.Unspecified));

        Assert.Equal(isLate ? 1 : null, graded.Late?.Days);
        Assert.Equal(isLate ? 3.6m : 4, graded.Points);
        Assert.Equal(isUnclear, graded.Flags.OfType<Flag.SavedUnclear>().Any());
        Assert.All(graded.Flags.OfType<Flag.SavedLate>(), late => Assert.Equal(Utc(shown).AddHours(-1), late.Saved));
    }

    /// <summary>A file that lies there since October was not saved in November; a day and two hours may be zones apart.</summary>
    [Theory]
    [InlineData("2026-11-30T12:00:00", "2026-10-25T01:29:59", true)]
    [InlineData("2031-01-01T00:00:00", "2026-11-20T15:00:00", true)]
    [InlineData("2026-11-30T12:00:00", "2026-11-29T09:59:59", true)]
    [InlineData("2026-11-30T12:00:00", "2026-11-29T10:00:00", false)]
    [InlineData("2026-11-30T12:00:00", "2026-12-01T00:00:00", false)]
    [InlineData("2026-11-30T12:00:00", "1980-01-01T00:00:00", false)]
    [InlineData("2026-11-30T12:00:00", null, false)]
    public void A_time_inside_that_is_after_the_file_came_costs_nothing_and_is_asked_about(string saved, string? dated, bool isAsked)
    {
        var graded = Graded(Utc(saved), dated: dated is null ? null : Utc(dated));

        Assert.Equal(isAsked, graded.Late is null);
        Assert.Equal(isAsked, graded.Points == 4);
        Assert.IsType(isAsked ? typeof(Flag.SavedAfterItCame) : typeof(Flag.SavedLate), Assert.Single(graded.Flags));
    }

    private static DateTime Utc(string text) =>
        DateTime.SpecifyKind(DateTime.Parse(text, System.Globalization.CultureInfo.InvariantCulture), DateTimeKind.Utc);

    [Fact]
    public void A_workbook_that_does_not_say_when_it_was_saved_is_not_late_and_is_told()
    {
        var graded = Graded(null);

        Assert.Null(graded.Late);
        Assert.Equal(4, graded.Points);
        Assert.Equal(new Flag.SavedUnknown(new("ada.xlsx")), Assert.Single(graded.Flags));
        Assert.Empty(Graded(new DateTime(2026, 11, 20, 15, 0, 0, DateTimeKind.Utc)).Flags);
    }

    [Fact]
    public void Without_a_policy_lateness_is_a_fact_that_costs_nothing()
    {
        var graded = Graded(new DateTime(2026, 11, 22, 0, 0, 0, DateTimeKind.Utc), Class);

        Assert.Equal((2, 0.0m, 4.0m), (graded.Late!.Days, graded.Late.Off, graded.Points));
        Assert.Equal(
            new Flag.SavedLate(new("ada.xlsx"), new(2026, 11, 22, 0, 0, 0, DateTimeKind.Utc), Due, 0),
            Assert.Single(graded.Flags)
        );
    }

    [Fact]
    public void A_correction_sets_what_an_answer_is_worth_and_lateness_is_taken_off_all()
    {
        var late = LateWork.Mark(
            ClassGrader.Grade(
                Strict,
                [new ReturnedBook(Ada).As("ada.xlsx") with { Modified = new DateTime(2026, 11, 21, 0, 0, 0, DateTimeKind.Utc) }]
            ),
            Due
        );

        Assert.Equal(1.8m, Corrector.Apply(late, [new("ada-berg", "dough", "sum", 2, "On paper.")]).Students[0].Points);
    }
}
