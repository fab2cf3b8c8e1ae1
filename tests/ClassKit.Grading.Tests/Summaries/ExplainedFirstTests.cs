using ClassKit.CellFormulas.Formulas;
using ClassKit.CellFormulas.Values;
using ClassKit.Exercises.Authoring;
using ClassKit.Exercises.Cohorts;
using ClassKit.Exercises.Dealing;
using ClassKit.Grading.Findings;
using ClassKit.Grading.Results;
using ClassKit.Grading.Summaries;

namespace ClassKit.Grading.Tests.Summaries;

/// <summary>Of parts that are equally weak, the one comes first of which it is known what went wrong.</summary>
public sealed class ExplainedFirstTests
{
    private static readonly Misconception Halved = new("halved", CellFormula.Of("=mass/2"), "You halved it.");

    private static readonly AnswerFinding[] Wrong =
    [
        new AnswerFinding.NotRight(),
        new AnswerFinding.ErrorValue(CellError.DivideByZero),
        new AnswerFinding.NearMiss([], "=mass*3", new Dictionary<string, string>(), true),
        new AnswerFinding.WrongTurn(Halved),
        new AnswerFinding.OffByTens(10, true),
    ];

    private static readonly IReadOnlyList<Exercise> Exercises = [.. Wrong.Select((_, at) => Exercise($"e{at}"))];

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

    private static Exercise Exercise(string id) =>
        new(
            id,
            id,
            "weighing",
            ExerciseLevel.Standard,
            5,
            "arithmetic",
            "Double it.",
            [new("mass", "Mass", "g", 100, 900, 1)],
            [],
            [new("double", "How much?", CellFormula.Of("=mass*2"), "g", Tolerance.Absolute(0.5), 2, true, [])],
            []
        );

    [Fact]
    public void Near_misses_wrong_turns_and_slips_come_before_what_nobody_can_name() =>
        Assert.Equal(["e2", "e3", "e4", "e0", "e1"], Summarize((_, _) => false).TeachAgain.Select(part => part.Exercise.Id));

    [Fact]
    public void A_weaker_part_comes_first_whatever_is_known_of_it() =>
        Assert.Equal(
            ["e0", "e2", "e3", "e4", "e1"],
            Summarize((student, exercise) => exercise != 0 && student == 0).TeachAgain.Select(part => part.Exercise.Id)
        );

    private static ClassSummary Summarize(Func<int, int, bool> isRight) =>
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
                                [.. Exercises.Select((exercise, index) => Answer(exercise, isRight(at, index) ? null : Wrong[index]))],
                                []
                            )
                    ),
                ],
                []
            )
        );

    private static AnswerGrade Answer(Exercise exercise, AnswerFinding? wrong) =>
        new(
            exercise,
            exercise.Parts[0],
            wrong switch
            {
                null => Outcome.Sound,
                AnswerFinding.WrongTurn => Outcome.Misconception,
                _ => Outcome.Incorrect,
            },
            wrong is null ? 2 : 0,
            2,
            CellValue.Blank,
            1,
            null,
            [wrong ?? new AnswerFinding.Right()],
            new Dictionary<string, double>()
        );
}
