using ClassKit.Exercises.Cohorts;
using ClassKit.Exercises.Dealing;
using ClassKit.Exercises.Variants;
using ClassKit.Grading.Results;
using ClassKit.Pages.Rendering;
using ClassKit.Wording.Cohorts;

namespace ClassKit.Pages.ClassPrints;

/// <summary>What is printed for a whole class at once, in pieces made one by one: of a large class it is never whole in memory.</summary>
internal static class PrintPieces
{
    /// <summary>Everybody's feedback; who has handed nothing in gets none.</summary>
    public static IEnumerable<string> Feedback(ClassGrades grades, Func<StudentGrade, Variant?> another, ClassPart? part)
    {
        var students = part?.Of(grades.Students) ?? grades.Students;
        var large = Large(grades.Dealt).ToHashSet(StringComparer.Ordinal);
        var all = students.Where(PrintedClass.IsTold).ToList();
        var told = all.Where(student => !large.Contains(student.Who.Shown)).ToList();
        var missing = students.Except(all).Select(student => student.Who.Shown).ToList();
        return Of(
            Title("Feedback to print", part),
            "feedback brief to-print",
            grades.Dealt,
            PrintedClass.OfFeedback(grades, part),
            string.Join(
                ' ',
                [
                    .. missing.Count == 0 ? [] : new[] { $"Nothing came back from {Phrases.List(missing)}: there is no sheet for them." },
                    .. Apart(all.Except(told).Select(student => student.Who.Shown), "feedback"),
                ]
            ),
            told.Select(student =>
                PageRenderer.Render<FeedbackSheet>(
                    (nameof(FeedbackSheet.Grade), student),
                    (nameof(FeedbackSheet.Dealt), grades.Dealt),
                    (nameof(FeedbackSheet.Another), another(student))
                )
            )
        );
    }

    /// <summary>Everybody's exercises, each on a side of its own, to be worked on paper.</summary>
    public static IEnumerable<string> Sheets(DealtClass dealt, ClassPart? part) =>
        part is null ? Sheets(dealt, "Sheets to print") : Sheets(dealt.Of(part), Title("Sheets to print", part));

    private static IEnumerable<string> Sheets(DealtClass dealt, string title) =>
        Of(
            title,
            "sheet to-print",
            dealt,
            PrintedClass.OfSheets(dealt),
            string.Concat(Apart(Large(dealt), "sheets")),
            Usual(dealt)
                .Select(student =>
                    PageRenderer.Render<PracticeSheet>((nameof(PracticeSheet.Class), dealt), (nameof(PracticeSheet.Dealt), student))
                )
        );

    private static string Title(string title, ClassPart? part) => part is null ? title : ClassPartWords.Title(title, part);

    /// <summary>Large print takes as many sheets as it takes, so that it is printed from the student's own file.</summary>
    private static IEnumerable<DealtStudent> Usual(DealtClass dealt) => dealt.Students.Where(student => !student.LargePrint);

    private static IEnumerable<string> Large(DealtClass dealt) =>
        dealt.Students.Where(student => student.LargePrint).Select(student => student.Who.Shown);

    private static IEnumerable<string> Apart(IEnumerable<string> large, string folder) =>
        large.ToList() is { Count: > 0 } names
            ? [$"In large print, and so not here but each in a file of their own in the folder “{folder}”: {Phrases.List(names)}."]
            : [];

    private static IEnumerable<string> Of(
        string title,
        string style,
        DealtClass dealt,
        PrintedClass printed,
        string aside,
        IEnumerable<string> students
    )
    {
        var around = PageRenderer
            .Render<ClassPrintPage>(
                (nameof(ClassPrintPage.Title), title),
                (nameof(ClassPrintPage.Class), style),
                (nameof(ClassPrintPage.Dealt), dealt),
                (nameof(ClassPrintPage.Printed), printed),
                (nameof(ClassPrintPage.Aside), aside)
            )
            .Split(ClassPrintPage.Seam);
        return students.Prepend(around[0]).Append(around[1]);
    }
}
