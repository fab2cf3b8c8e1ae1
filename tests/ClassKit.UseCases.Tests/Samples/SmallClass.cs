using ClassKit.Content.Lessons;
using ClassKit.Exercises.Authoring;
using ClassKit.Exercises.Cohorts;
using ClassKit.Exercises.Dealing;
using ClassKit.Exercises.Layout;
using ClassKit.Lessons.Authored;
using ClassKit.UseCases.Rehearsing;
using ClassKit.UseCases.Touring;
using ClassKit.Workbooks.Dealing;
using ClassKit.Workbooks.Filling;

namespace ClassKit.UseCases.Tests.Samples;

/// <summary>Three invented students with two exercises of the demo lesson, and workbooks as they would come back.</summary>
internal static class SmallClass
{
    public static Lesson Lesson { get; } = LessonReader.Read(DemoMaterial.Find(AppContext.BaseDirectory)!.Lesson).Model!;

    public static DealtClass Dealt { get; } = Deal();

    public static PracticeLayout Layout { get; } = Dealt.LayOut();

    public static IReadOnlyList<DealtAnswer> AdasAnswers { get; } = [.. Layout.AnswersOf(Dealt.Students[0])];

    public static DealtStudent Ada => Dealt.Students[0];

    public static DealtStudent Ben => Dealt.Students[1];

    public static DealtStudent Cleo => Dealt.Students[2];

    /// <summary>A student's workbook with every answer right and a formula.</summary>
    public static byte[] Filled(DealtStudent student) => Filled(Dealt, student);

    /// <summary>A student's workbook of some deal with every answer right and a formula.</summary>
    public static byte[] Filled(DealtClass dealt, DealtStudent student)
    {
        var layout = dealt.LayOut();
        var answers = dealt
            .ExercisesOf(student)
            .SelectMany(exercise =>
            {
                var sheet = new AnswerSheet(layout.Of(exercise.Id), student);
                return exercise.Parts.Select(part => sheet.Answer(part, AnswerWay.Cells)).ToList();
            });
        return WorkbookFiller.Fill(DealtWorkbookWriter.Write(dealt, student), Returning.Edits(layout, [.. answers]));
    }

    /// <summary>A student's workbook as it was dealt.</summary>
    public static byte[] Blank(DealtStudent student) => DealtWorkbookWriter.Write(Dealt, student);

    /// <summary>Another deal to the same students.</summary>
    public static DealtClass Deal(
        ulong seed = 11,
        string cohort = "Invented class",
        string? title = null,
        DealSettings? settings = null,
        Func<Exercise, Exercise>? change = null
    )
    {
        var roster = new Roster(
            cohort,
            [new("ada-berg", "Ada Berg", "ada.berg@example.org"), new("ben-okoye", "Ben Okoye"), new("cleo-marin", "Cleo Marín")]
        );
        return Dealer
            .Deal(
                Lesson.Id,
                title ?? Lesson.Title,
                [.. Lesson.Exercises.Take(2).Select(change ?? (exercise => exercise))],
                Lesson.Marking,
                roster,
                seed,
                settings
            )
            .Class!;
    }
}
