using ClassKit.CellFormulas.Formulas;
using ClassKit.CellFormulas.Values;
using ClassKit.Exercises.Authoring;
using ClassKit.Exercises.Marking;
using ClassKit.Grading.Results;

namespace ClassKit.Grading.Tests.Summaries;

/// <summary>Totals of the best exercises and with a limit, worked by hand.</summary>
public sealed class TotalTests
{
    private static readonly TotalRule Best = new(2, null);

    /// <summary>Answers of exercises of one part each, in workbook order: what each earned and what it could earn.</summary>
    private static StudentGrade Student(TotalRule rule, params (string Exercise, decimal Points, decimal OutOf)[] answers) =>
        new(
            new("s", "S"),
            GradeStatus.Graded,
            "s.xlsx",
            [.. answers.Select(answer => Answer(answer.Exercise, answer.Points, answer.OutOf))],
            []
        )
        {
            Rule = rule,
        };

    private static AnswerGrade Answer(string id, decimal points, decimal outOf)
    {
        var part = new Part("a", "How much?", CellFormula.Of("=mass"), "g", Tolerance.Absolute(0.5), 10, true, []);
        var exercise = new Exercise(
            id,
            id,
            "weighing",
            ExerciseLevel.Standard,
            5,
            "arithmetic",
            "Weigh it.",
            [new("mass", "Mass", "g", 100, 900, 1)],
            [],
            [part],
            []
        );
        return new(exercise, part, Outcome.Sound, points, outOf, CellValue.Blank, 1, null, [], new Dictionary<string, double>());
    }

    private static (decimal, decimal, string) Total(StudentGrade student) =>
        (student.Points, student.OutOf, string.Join(" ", student.Total.Uncounted.Order()));

    [Fact]
    public void Everything_counts_unless_the_scheme_says_otherwise()
    {
        Assert.Equal((9, 30, ""), Total(Student(TotalRule.Everything, ("a", 2, 10), ("b", 7, 20))));
    }

    [Fact]
    public void The_greatest_shares_count_whatever_the_exercises_are_worth()
    {
        // 4 of 5 and 6 of 10 are greater shares than 9 of 20, which is more points than either.
        Assert.Equal((10, 15, "b"), Total(Student(Best, ("a", 4, 5), ("b", 9, 20), ("c", 6, 10))));
    }

    [Fact]
    public void Of_two_alike_the_first_in_the_workbook_counts()
    {
        Assert.Equal((13, 30, "c"), Total(Student(Best, ("a", 10, 20), ("b", 3, 10), ("c", 1.5m, 5))));
    }

    [Fact]
    public void The_noise_of_adding_does_not_decide_between_two_alike()
    {
        // 0.1 + 0.2 is a little more than 0.3 in binary, and both are a tenth of 3 points.
        var student = Student(new(1, null), ("a", 0.3m, 3), ("b", 0.1m, 1.5m), ("b", 0.2m, 1.5m));

        Assert.Equal((0.3m, 3, "b"), Total(student));
    }

    [Fact]
    public void What_nobody_could_judge_yet_counts_last()
    {
        Assert.Equal((0, 20, "a"), Total(Student(Best, ("a", 0, 0), ("b", 0, 10), ("c", 0, 10))));
    }

    [Fact]
    public void Fewer_exercises_than_the_best_that_count_all_count()
    {
        Assert.Equal((3, 10, ""), Total(Student(Best, ("a", 3, 10))));
    }

    [Fact]
    public void The_limit_holds_for_what_is_earned_and_for_what_can_be()
    {
        Assert.Equal((12, 12, ""), Total(Student(new(null, 12), ("a", 8, 10), ("b", 9, 10))));
        Assert.Equal((7, 12, "a"), Total(Student(new(2, 12), ("a", 0, 10), ("b", 3, 10), ("c", 4, 10))));
    }

    [Fact]
    public void Lateness_takes_its_share_off_the_limited_total()
    {
        var late = Student(new(null, 12), ("a", 8, 10), ("b", 9, 10)) with { Late = new(1, 0.1m) };

        Assert.Equal((10.8m, 12, ""), Total(late));
    }
}
