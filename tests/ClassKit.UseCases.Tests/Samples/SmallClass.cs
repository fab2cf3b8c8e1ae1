using ClassKit.Content;
using ClassKit.Exercises;
using ClassKit.Workbooks;

namespace ClassKit.UseCases.Tests.Samples;

/// <summary>Three invented students with two exercises of the demo lesson, and workbooks as they would come back.</summary>
internal static class SmallClass
{
    public static DealtClass Dealt { get; } = Deal();

    public static DealtStudent Ada => Dealt.Students[0];

    public static DealtStudent Ben => Dealt.Students[1];

    public static DealtStudent Cleo => Dealt.Students[2];

    /// <summary>A student's workbook with every answer right and a formula.</summary>
    public static byte[] Filled(DealtStudent student)
    {
        var answers = Dealt.Exercises.SelectMany(exercise =>
        {
            var sheet = new AnswerSheet(exercise, student);
            return exercise.Parts.Select(part => sheet.Answer(part, AnswerWay.Cells)).ToList();
        });
        return WorkbookFiller.Fill(Blank(student), Returning.Edits(student, [.. answers]));
    }

    /// <summary>A student's workbook as it was dealt.</summary>
    public static byte[] Blank(DealtStudent student) => DealtWorkbookWriter.Write(Dealt, student);

    private static DealtClass Deal()
    {
        var demo = DemoMaterial.Find(AppContext.BaseDirectory) ?? throw new InvalidOperationException("The tests run inside a checkout.");
        var lesson = LessonReader.Read(demo.Lesson).Model!;
        var roster = new Roster("Invented class", [new("ada-berg", "Ada Berg", "ada.berg@example.org"), new("ben-okoye", "Ben Okoye"), new("cleo-marin", "Cleo Marín")]);
        return Dealer.Deal(lesson.Id, lesson.Title, [.. lesson.Exercises.Take(2)], lesson.Marking, roster, 11).Class!;
    }
}
