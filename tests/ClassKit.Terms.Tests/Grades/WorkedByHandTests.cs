using ClassKit.Exercises.Cohorts;
using ClassKit.Terms.Grades;
using ClassKit.Terms.Marks;
using ClassKit.Terms.Rules;
using ClassKit.Terms.Work;

namespace ClassKit.Terms.Tests.Grades;

/// <summary>One student's term, worked by hand.</summary>
public sealed class WorkedByHandTests
{
    private static readonly Student Student = new("ada", "Ada");

    private static readonly GradeRule Rule = new(
        "rule",
        "Rule",
        [
            new("Calculations", 0.4m, 1, CategoryCounting.Alike),
            new("Bench work", 0.4m, 0, CategoryCounting.Alike),
            new("Written work", 0.2m, 0, CategoryCounting.ByPoints),
        ],
        [new("Bench work", null, 50, 0), new("Bench work", "Safety", 60, 1)],
        new([new("Not yet", 0), new("Secure", 60), new("Good", 75), new("Excellent", 90)]),
        new(ResitChoice.Better, 0.7m),
        AbsenceRule.Zero,
        0.1m,
        MarkerRule.Mean,
        new(1, TieRule.Up)
    );

    private static readonly IReadOnlyList<Assignment> Works =
    [
        new("c1", "Set 1", WorkKind.CalculationSet, "Calculations", 20),
        new("c2", "Set 2", WorkKind.CalculationSet, "Calculations", 30),
        new("c3", "Set 3", WorkKind.CalculationSet, "Calculations", 10),
        new("b1", "Day 1", WorkKind.BenchWork, "Bench work", 45),
        new("b2", "Day 2", WorkKind.BenchWork, "Bench work", 45),
        new("e1", "Essay", WorkKind.WrittenAnswers, "Written work", 10),
        new("e2", "Test", WorkKind.TypedMarks, "Written work", 40),
    ];

    private static TermGrade Grade(params (string Work, int Sitting, Mark Mark)[] marks) =>
        TermGrader.Grade(
            new("Term", new("Class", [Student]), Rule, Works, []),
            Student,
            marks.Select(mark => new Attempt("ada", mark.Work, mark.Sitting, mark.Mark))
        );

    private static Mark Safe(decimal points, decimal share) => Mark.Of(points, 45) with { Criteria = [new("Safety", share)] };

    [Fact]
    public void A_whole_term()
    {
        // Calculations: 18/20 = 0.9; 24/30 less a tenth for lateness = 0.72; 4/10, resat 9/10 and held to 0.7. The lowest, 0.7, is dropped:
        // (0.9 + 0.72) / 2 = 0.81. Bench work: 36/45 = 0.8, the second day excused: 0.8. Written work, by points: (8 + 30) / 50 = 0.76. 0.4
        // · 81 + 0.4 · 80 + 0.2 · 76 = 32.4 + 32 + 15.2 = 79.6, rounded 80.
        var grade = Grade(
            ("c1", 1, Mark.Of(18, 20)),
            ("c2", 1, Mark.Of(24, 30) with { Lateness = Lateness.Late }),
            ("c3", 1, Mark.Of(4, 10)),
            ("c3", 2, Mark.Of(9, 10)),
            ("b1", 1, Safe(36, 1)),
            ("b2", 1, Mark.Excused),
            ("e1", 1, Mark.Of(8, 10)),
            ("e2", 1, Mark.Of(30, 40))
        );

        Assert.Equal([0.81m, 0.8m, 0.76m], grade.Categories.Select(category => category.Share));
        Assert.Equal((79.6m, 80m, 2, 2), (grade.Percent, grade.Rounded, grade.ByAverage, grade.Place));
        Assert.Equal(
            [Standing.Counts, Standing.Counts, Standing.Dropped, Standing.Counts, Standing.Excused, Standing.Counts, Standing.Counts],
            grade.Works.Select(work => work.Standing)
        );
        Assert.False(grade.IsProvisional);
    }

    [Fact]
    public void A_grade_is_not_final_while_an_answer_of_a_work_that_may_count_waits_for_the_instructor()
    {
        // Every work has a mark; of one, two answers are not decided on. Whether it counts or is dropped as the lowest, it may yet change.
        (string, int, Mark)[] With(string waiting) =>
            [
                .. Works.Select(work =>
                    (
                        work.Id,
                        1,
                        Mark.Of(work.Weight / 2, work.Weight) with
                        {
                            Undecided = work.Id == waiting ? 2 : 0,
                            Criteria = [new("Safety", 1)],
                        }
                    )
                ),
            ];

        Assert.False(Grade(With("none")).IsProvisional);
        Assert.All(Works, work => Assert.True(Grade(With(work.Id)).IsProvisional));
        Assert.Equal(2, Grade(With("c2")).Works.Sum(work => work.Undecided));
        Assert.False(Grade([.. With("c2").Where(mark => mark.Item1 != "c2"), ("c2", 1, Mark.Excused)]).IsProvisional);
    }

    /// <summary>Excused from all that could show it: the average stands, and nobody reads it as final.</summary>
    [Fact]
    public void A_grade_is_not_final_before_what_must_be_passed_was_shown()
    {
        TermGrade With(string shows) =>
            Grade([
                .. Works.Select(work =>
                    (
                        work.Id,
                        1,
                        work.Id[0] == 'b' && work.Id != shows
                            ? Mark.Excused
                            : Mark.Of(work.Weight, work.Weight) with
                            {
                                Criteria = [new("Safety", 1)],
                            }
                    )
                ),
            ]);

        Assert.Equal(
            (100m, true, LineState.Open),
            With("none") is var grade ? (grade.Rounded, grade.IsProvisional, grade.Lines[0].State) : default
        );
        Assert.Equal(
            (100m, false, LineState.Passed),
            With("b1") is var shown ? (shown.Rounded, shown.IsProvisional, shown.Lines[0].State) : default
        );
    }

    [Fact]
    public void A_category_without_a_mark_leaves_its_weight_to_the_others()
    {
        // 0.4 and 0.2 are two thirds and one third: (2 · 60 + 90) / 3 = 70.
        var grade = Grade(("c1", 1, Mark.Of(12, 20)), ("e1", 1, Mark.Of(9, 10)));

        Assert.Equal(70, grade.Percent!.Value, 20);
        Assert.Equal([2 / 3m, 0, 1 / 3m], grade.Categories.Select(category => category.WeightNow));
        Assert.Equal(LineState.Open, grade.Lines[0].State);
        Assert.True(grade.IsProvisional);
    }

    [Fact]
    public void Safety_missed_holds_back_full_marks()
    {
        var grade = Grade(("c1", 1, Mark.Of(20, 20)), ("b1", 1, Safe(45, 0.5m)), ("e2", 1, Mark.Of(40, 40)));

        Assert.Equal((100m, 3, 1), (grade.Rounded, grade.ByAverage, grade.Place));
    }

    [Fact]
    public void Who_was_excused_first_sits_without_a_limit_and_who_was_absent_does_not()
    {
        Assert.Equal(90, Grade(("c1", 1, Mark.Excused), ("c1", 2, Mark.Of(18, 20))).Percent);
        Assert.Equal(70, Grade(("c1", 1, Mark.Absent), ("c1", 2, Mark.Of(18, 20))).Percent);
    }

    [Fact]
    public void What_lateness_cost_already_is_not_taken_off_twice() =>
        Assert.Equal(80, Grade(("c1", 1, Mark.Of(16, 20) with { Lateness = Lateness.LateAndSettled })).Percent);

    [Fact]
    public void An_absence_is_no_points() => Assert.Equal(0, Grade(("e1", 1, Mark.Absent)).Percent);

    [Fact]
    public void Without_any_mark_there_is_no_grade() => Assert.Null(Grade(("c1", 1, Mark.Excused)).Place);
}
