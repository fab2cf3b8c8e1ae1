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

    private static StudentGrade Graded(DateTime? saved, DealtClass? dealt = null)
    {
        var book = new ReturnedBook(Ada).Answer("sum", "=flour+room+friction").Answer("temperature", "=3*want-sum");
        return LateWork.Mark(ClassGrader.Grade(dealt ?? Strict, [book.As("ada.xlsx") with { Modified = saved }]), Due).Students[0];
    }

    // Due at 16:00 UTC. Two right parts of 2 points each.
    [Theory]
    [InlineData("2026-11-20T15:59:00", null, 4.0)]
    [InlineData("2026-11-20T16:00:00", null, 4.0)]
    [InlineData("2026-11-20T16:00:01", 1, 3.6)]
    [InlineData("2026-11-21T16:00:00", 1, 3.6)]
    [InlineData("2026-11-21T16:00:01", 2, 3.2)]
    [InlineData("2026-12-24T12:00:00", 34, 2.0)]
    public void Every_day_begun_costs_its_share_up_to_the_limit(string saved, int? days, double points)
    {
        var graded = Graded(DateTime.Parse(saved, System.Globalization.CultureInfo.InvariantCulture));

        Assert.Equal(days, graded.Late?.Days);
        Assert.Equal((decimal)points, graded.Points);
        Assert.Equal(8, graded.OutOf);
    }

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
