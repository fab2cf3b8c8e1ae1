using ClassKit.Notes;
using ClassKit.Pages;
using ClassKit.UseCases.Dealing;
using ClassKit.UseCases.Grading;
using ClassKit.UseCases.Output;

namespace ClassKit.UseCases.Rehearsing;

/// <summary>The files of a rehearsal: its report, and everything behind it.</summary>
public static class RehearsalFiles
{
    /// <summary>What to open first.</summary>
    public const string Report = "rehearsal.html";

    /// <summary>Each made when it is written.</summary>
    public static IReadOnlyList<OutputFile> Of(RehearsalMade rehearsal)
    {
        ArgumentNullException.ThrowIfNull(rehearsal);
        return
        [
            OutputFile.OfText(Report, () => HtmlPages.Rehearsal(rehearsal.Report)),
            .. DealFiles.Of(rehearsal.Deal).Select(file => file.Below("dealt")),
            .. rehearsal.Deal.Dealt.Students.Zip(rehearsal.Returned, (student, workbook) =>
                new OutputFile($"returned/{student.Who.Id}.xlsx", workbook)
            ),
            .. GradeFiles.Of(rehearsal.Graded).Select(file => file.Below("graded")),
        ];
    }

    /// <summary>What an instructor should know of it.</summary>
    public static IReadOnlyList<Note> Notes(RehearsalMade rehearsal)
    {
        ArgumentNullException.ThrowIfNull(rehearsal);
        return [new Note.Rehearsed(rehearsal.Returned.Count, rehearsal.Report)];
    }
}
