using ClassKit.CellFormulas.Values;
using ClassKit.Exercises.Authoring;
using ClassKit.Exercises.Dealing;
using ClassKit.Grading.Findings;
using ClassKit.Grading.Results;

namespace ClassKit.Pages.Tests.Samples;

/// <summary>
/// The sample class with one more question, answered in own words: unread, read, too long, in another script, and not at all.
/// </summary>
internal static class SampleWords
{
    private static readonly Part Why = new(
        "why",
        "Why does the dough get warmer in the mixer?",
        WordsAsked.NoKey,
        "",
        Tolerance.Absolute(0),
        2,
        false,
        []
    )
    {
        InWords = new("One point for the friction of hook and bowl. One for the work of the motor that becomes heat."),
    };

    private static readonly string?[] Said =
    [
        "The hook rubs the dough against the bowl.\nAll that work becomes heat.",
        "=1+1 <b>friction</b> & heat",
        "X" + new string('x', 1_999),
        "بسبب الاحتكاك",
        null,
    ];

    private static readonly Exercise Asked = SampleExercises.WaterTemperature with
    {
        Parts = [.. SampleExercises.WaterTemperature.Parts, Why],
    };

    public static ClassGrades Grades { get; } =
        SampleClass.Grades with
        {
            Dealt = Dealt,
            Students =
            [
                .. SampleClass.Grades.Students.Select(
                    (student, index) =>
                        student.Status == GradeStatus.Graded ? student with { Answers = [.. Kept(student), Answer(index)] } : student
                ),
            ],
        };

    private static DealtClass Dealt =>
        SampleClass.Dealt with
        {
            Exercises = [.. SampleClass.Dealt.Exercises.Select(With)],
            Students =
            [
                .. SampleClass.Dealt.Students.Select(seat =>
                    seat with
                    {
                        Variants =
                        [
                            .. seat.Variants.Select(variant =>
                                variant with
                                {
                                    Exercise = With(variant.Exercise),
                                    Answers =
                                        variant.Exercise.Id == Asked.Id
                                            ? new Dictionary<string, double>(variant.Answers) { ["why"] = 0 }
                                            : variant.Answers,
                                }
                            ),
                        ],
                    }
                ),
            ],
        };

    private static Exercise With(Exercise exercise) => exercise.Id == Asked.Id ? Asked : exercise;

    private static IEnumerable<AnswerGrade> Kept(StudentGrade student) =>
        student.Answers.Select(answer => answer with { Exercise = With(answer.Exercise) });

    private static AnswerGrade Answer(int index) =>
        Said[index % Said.Length] is not { } words
            ? new(
                Asked,
                Why,
                Outcome.Blank,
                0,
                2,
                CellValue.Blank,
                0,
                null,
                [new AnswerFinding.Empty("C20")],
                new Dictionary<string, double>()
            )
            : new(
                Asked,
                Why,
                Outcome.Unsupported,
                index == 1 ? 1.5m : 0,
                index == 1 ? 2 : 0,
                CellValue.FromText(words),
                0,
                null,
                [new AnswerFinding.Wrote(words.Length == 2_000 ? 3_210 : words.Length)],
                new Dictionary<string, double>()
            )
            {
                Correction = index == 1 ? new(0, "The motor’s work is missing.") : null,
            };
}
