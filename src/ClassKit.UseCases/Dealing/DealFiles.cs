using ClassKit.Exercises.Cohorts;
using ClassKit.Exercises.Dealing;
using ClassKit.Pages;
using ClassKit.UseCases.Output;
using ClassKit.Wording.Cohorts;
using ClassKit.Workbooks.Dealing;

namespace ClassKit.UseCases.Dealing;

/// <summary>The files of a deal: a workbook a student, the same on a sheet to print, the answer key, and dealt.json for grading.</summary>
public static class DealFiles
{
    /// <summary>What to open first.</summary>
    public const string AnswerKey = "answer-key.html";

    /// <summary>Every student's sheet in one file.</summary>
    public const string SheetsToPrint = "sheets-to-print.html";

    /// <summary>Each made when it is written; those of students who had them before stay as they are.</summary>
    public static IReadOnlyList<OutputFile> Of(DealMade deal)
    {
        ArgumentNullException.ThrowIfNull(deal);
        return deal.Request.Earlier.Keep(Of(deal.Dealt), deal.Dealt);
    }

    /// <summary>The answer key, or that of the first students of a class too large for one.</summary>
    internal static string FirstToOpen(DealtClass dealt) => ClassPart.Of(dealt.Students.Count)[0].Named(AnswerKey);

    /// <summary>Where a student's sheet goes.</summary>
    internal static string SheetOf(DealtStudent student) => $"sheets/{student.Who.Id}.html";

    internal static IReadOnlyList<OutputFile> Of(DealtClass dealt)
    {
        var writer = new DealtWorkbookWriter(dealt);
        return
        [
            .. dealt.Students.Select(student => new OutputFile(student.Workbook, stream => stream.Write(writer.Write(student)))),
            .. dealt.Students.Select(student => OutputFile.OfText(SheetOf(student), () => HtmlPages.Sheet(dealt, student))),
            .. OfClass(dealt),
        ];
    }

    /// <summary>Those of the whole class.</summary>
    internal static IReadOnlyList<OutputFile> OfClass(DealtClass dealt)
    {
        var parts = ClassPart.Of(dealt.Students.Count);
        return
        [
            .. parts.Select(part => OutputFile.OfPieces(part.Named(SheetsToPrint), () => HtmlPages.SheetsToPrint(dealt, part))),
            .. parts.Select(part =>
                OutputFile.OfPieces(part.Named(AnswerKey), () =>
                    HtmlPages.AnswerKey(dealt.Of(part) with { Cohort = ClassPartWords.Cohort(dealt.Cohort, part) })
                )
            ),
            new OutputFile(DealtJson.FileName, stream => DealtJson.Write(stream, dealt)),
        ];
    }
}
