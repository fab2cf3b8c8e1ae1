using ClassKit.CellFormulas.Formulas;
using ClassKit.CellFormulas.Values;
using ClassKit.Exercises.Authoring;
using ClassKit.Exercises.Dealing;
using ClassKit.Exercises.Variants;
using ClassKit.Grading.Results;
using ClassKit.Grading.Statistics;

namespace ClassKit.Grading.Tests.Statistics;

/// <summary>Three students, of whom all were asked a, two b and one c; the figures are worked out by hand.</summary>
public sealed class SpreadStatisticsTests
{
    private static readonly IReadOnlyList<Exercise> Exercises = [.. ((string[])["a", "b", "c"]).Select(Of)];

    private static readonly TestStatistics Statistics = TestStatistics.Of(Grades());

    private static Exercise Of(string id) =>
        new(
            id,
            id,
            "any",
            ExerciseLevel.Standard,
            5,
            "made up",
            "{x}",
            [new("x", "X", "", 1, 9, 1)],
            [],
            [new("y", "?", CellFormula.Of("=x*2"), "", Tolerance.Absolute(0.1), 2, false, [])],
            []
        );

    private static ClassGrades Grades()
    {
        List<(StudentGrade Grade, DealtStudent Seat)> students =
        [
            Student("s-1", ("a", 2), ("b", 1)),
            Student("s-2", ("a", 0), ("b", 0)),
            Student("s-3", ("a", 1), ("c", 2)),
        ];
        var dealt = new DealtClass(
            "l",
            "L",
            "C",
            1,
            new("m", "M", 1, 1, 0, 0.6m),
            Exercises,
            [.. students.Select(student => student.Seat)]
        );
        return new ClassGrades(dealt, [.. students.Select(student => student.Grade)], []);
    }

    private static (StudentGrade Grade, DealtStudent Seat) Student(string id, params (string Exercise, decimal Points)[] earned) =>
        (
            new(
                new(id, id),
                GradeStatus.Graded,
                null,
                [.. earned.Select(one => Answer(Exercises.Single(exercise => exercise.Id == one.Exercise), one.Points))],
                []
            ),
            new(
                new(id, id),
                "",
                [
                    .. earned.Select(one => new Variant(
                        Exercises.Single(exercise => exercise.Id == one.Exercise),
                        new Dictionary<string, decimal> { ["x"] = 1 },
                        new Dictionary<string, double> { ["y"] = 2 }
                    )),
                ]
            )
        );

    private static AnswerGrade Answer(Exercise exercise, decimal points) =>
        new(
            exercise,
            exercise.Parts[0],
            Outcome.ValueOnly,
            points,
            2,
            CellValue.FromNumber(2),
            2,
            null,
            [],
            new Dictionary<string, double>()
        );

    [Fact]
    public void An_item_is_looked_at_among_those_who_were_asked_it()
    {
        Assert.Equal([3, 2, 1], Statistics.Items.Select(item => item.Asked));
        Assert.Equal([0.5, 0.25, 1], Statistics.Items.Select(item => item.Difficulty!.Value));
    }

    [Fact]
    public void It_is_held_against_the_share_that_each_earned_of_their_own_set()
    {
        // Item a: 2, 0, 1. Shares of the own set: 3/4, 0, 3/4. Their correlation is 0.75 / (√2 · √0.375).
        Assert.Equal(Math.Sqrt(0.75), Statistics.Items[0].WithTotal!.Value, 1e-12);
        // The rest of each set: 1/2, 0, 1.
        Assert.Equal(0.5, Statistics.Items[0].WithRest!.Value, 1e-12);
    }

    [Fact]
    public void Nothing_is_said_of_reliability_nor_of_an_item_that_one_student_was_asked()
    {
        Assert.Null(Statistics.Reliability);
        Assert.All(Statistics.Items, item => Assert.Null(item.AlphaWithout));
        Assert.Null(Statistics.Items[2].WithTotal);
    }
}
