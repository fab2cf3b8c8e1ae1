using ClassKit.CellFormulas.Formulas;
using ClassKit.CellFormulas.Values;
using ClassKit.Exercises.Authoring;
using ClassKit.Exercises.Cohorts;
using ClassKit.Exercises.Dealing;
using ClassKit.Grading.Results;
using ClassKit.Grading.Summaries;

namespace ClassKit.Grading.Tests.Summaries;

/// <summary>
/// Difficulty and discrimination of a skill are those of its parts' points added up: classical item statistics, worked by hand.
/// </summary>
public sealed class SkillSummaryTests
{
    private static readonly IReadOnlyList<Exercise> Exercises =
    [
        Exercise("one", "weighing"),
        Exercise("two", "weighing"),
        Exercise("three", "yeast"),
    ];

    private static readonly DealtClass Dealt = Dealer
        .Deal(
            "l",
            "L",
            Exercises,
            new("marks", "Marks", 0.4m, 1, 0, 0.6m),
            new("Class", [.. Enumerable.Range(0, 4).Select(at => new Student($"s-{at}", $"S {at}"))]),
            5
        )
        .Class!;

    private static Exercise Exercise(string id, string skill) =>
        new(
            id,
            id,
            skill,
            ExerciseLevel.Standard,
            5,
            "arithmetic",
            "Double it.",
            [new("mass", "Mass", "g", 100, 900, 1)],
            [],
            [new("double", "How much?", CellFormula.Of("=mass*2"), "g", Tolerance.Absolute(0.5), 2, true, [])],
            []
        );

    /// <summary>Grades four students; for each, which of the three exercises they have right.</summary>
    private static ClassSummary Summarize(params bool[][] right) =>
        ClassSummarizer.Summarize(
            new(
                Dealt,
                [
                    .. Dealt.Students.Select(
                        (student, at) =>
                            new StudentGrade(
                                student.Who,
                                GradeStatus.Graded,
                                "f.xlsx",
                                [
                                    .. Exercises.Select(
                                        (exercise, index) =>
                                            new AnswerGrade(
                                                exercise,
                                                exercise.Parts[0],
                                                right[at][index] ? Outcome.Sound : Outcome.Incorrect,
                                                right[at][index] ? 2 : 0,
                                                2,
                                                CellValue.Blank,
                                                1,
                                                null,
                                                [],
                                                new Dictionary<string, double>()
                                            )
                                    ),
                                ],
                                []
                            )
                    ),
                ],
                []
            )
        );

    private static readonly ClassSummary Mixed = Summarize(
        [true, true, true],
        [true, true, false],
        [true, false, true],
        [false, false, true]
    );

    [Fact]
    public void Skills_stand_in_the_order_of_the_workbook_with_their_parts()
    {
        Assert.Equal(["weighing", "yeast"], Mixed.Skills.Select(skill => skill.Skill));
        Assert.Equal([2, 1], Mixed.Skills.Select(skill => skill.Parts.Count));
        Assert.All(Mixed.Skills, skill => Assert.Equal(4, skill.Asked));
    }

    [Fact]
    public void Difficulty_is_the_share_of_points_earned()
    {
        // Weighing: 4 + 4 + 2 + 0 of 16 points; yeast: 2 + 0 + 2 + 2 of 8.
        Assert.Equal([10 / 16.0, 6 / 8.0], Mixed.Skills.Select(skill => skill.Difficulty!.Value));
    }

    [Fact]
    public void Discrimination_holds_the_best_against_the_weakest()
    {
        // 27 % of four students is 1.08: the best (6 points) whole and 0.08 of the two with 4; the weakest (2 points) and 0.08 of those
        // two. Weighing: best 1, weakest 0, and the middle two are on both sides, so 1 / 1.08. Yeast: best 1, weakest 1.
        Assert.Equal(1 / 1.08, Mixed.Skills[0].Discrimination!.Value, 12);
        Assert.Equal(0, Mixed.Skills[1].Discrimination!.Value, 12);
    }

    [Fact]
    public void Who_earned_less_than_the_line_is_named()
    {
        // Half of the weighing points is below the line of 60 %.
        Assert.Equal(["S 2", "S 3"], Mixed.Skills[0].Below.Select(student => student.Who.Name));
        Assert.Equal(["S 1"], Mixed.Skills[1].Below.Select(student => student.Who.Name));
    }

    [Fact]
    public void Where_nobody_differs_nothing_is_told_apart()
    {
        Assert.All(Summarize([true, true, true], [true, true, true], [true, true, true], [true, true, true]).Skills, skill =>
            Assert.Null(skill.Discrimination)
        );
    }
}
