using ClassKit.Exercises.Cohorts;
using ClassKit.Exercises.Dealing;
using ClassKit.Exercises.Draws;
using ClassKit.Exercises.Layout;
using ClassKit.Grading.Results;

namespace ClassKit.Grading.Tests;

/// <summary>A class of three with the published example dealt to the first.</summary>
internal static class DealtForTests
{
    public static DealtClass Class { get; } = Make();

    public static PracticeLayout Layout { get; } = Class.LayOut();

    public static DealtStudent Ada => Class.Students[0];

    public static DealtStudent Ben => Class.Students[1];

    public static DealtStudent Cleo => Class.Students[2];

    /// <summary>Grades one workbook of Ada's and returns the grade of one part.</summary>
    public static AnswerGrade Grade(ReturnedBook book, string part) => Grade(book).Answers.Single(answer => answer.Part.Id == part);

    /// <summary>Grades one workbook of Ada's.</summary>
    public static StudentGrade Grade(ReturnedBook book) => ClassGrader.Grade(Class, [book.As("ada.xlsx")]).Students[0];

    private static DealtClass Make()
    {
        var exercise = DoughTemperatureExercise.Exercise;
        IReadOnlyList<(Student Student, IReadOnlyDictionary<string, decimal> Givens)> dealt =
        [
            (new("ada-berg", "Ada Berg"), DoughTemperatureExercise.Published),
            (
                new("ben-okoye", "Ben Okoye"),
                new Dictionary<string, decimal>(DoughTemperatureExercise.Published) { ["room"] = 70, ["tap"] = 100 }
            ),
            (
                new("cleo-marin", "Cleo Marín"),
                new Dictionary<string, decimal>(DoughTemperatureExercise.Published) { ["room"] = 72, ["tap"] = 104 }
            ),
        ];
        return new(
            "lesson",
            "A lesson",
            "Test class",
            7,
            DoughTemperatureExercise.Marking,
            [exercise],
            [
                .. dealt.Select(entry =>
                {
                    var variant = VariantGenerator.ForFreshInputs(exercise).TryMake(entry.Givens, out var broken)
                        ?? throw new InvalidOperationException(broken!.ToString());
                    return new DealtStudent(entry.Student, $"workbooks/{entry.Student.Id}.xlsx", [variant]);
                }),
            ]
        );
    }
}
