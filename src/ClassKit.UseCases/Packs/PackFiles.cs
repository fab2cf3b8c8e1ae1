using ClassKit.Lessons.Packs;
using ClassKit.Notes;
using ClassKit.Pages;
using ClassKit.UseCases.Output;
using ClassKit.Workbooks.Observations;
using ClassKit.Workbooks.Requisitions;
using ClassKit.Workbooks.Sensory;

namespace ClassKit.UseCases.Packs;

/// <summary>The files of a lesson pack: pages, and workbooks for requisition, observations and tasting.</summary>
public static class PackFiles
{
    /// <summary>What to open first.</summary>
    public const string Index = "index.html";

    /// <summary>The files.</summary>
    public static IReadOnlyList<OutputFile> Of(LessonPack pack) =>
        [
            .. HtmlPages.Pack(pack).Select(page => OutputFile.OfText(page.FileName, page.Html)),
            new("requisition.xlsx", stream => stream.Write(RequisitionWriter.Write(pack))),
            new("observations.xlsx", stream => stream.Write(ObservationWriter.Write(pack))),
            new("tasting.xlsx", stream => stream.Write(TastingWriter.Write(pack))),
        ];

    /// <summary>The files with what an instructor should know of them.</summary>
    public static Produced Write(LessonPack pack)
    {
        ArgumentNullException.ThrowIfNull(pack);
        var (lesson, profile) = (pack.Lesson, pack.Class);
        return new(
            Of(pack),
            [
                new Note.Packed(lesson.Title, profile.Name, profile.Students, profile.Teams, Index),
                .. pack.Cut is { } cut ? [new Note.Cut(cut)] : (IEnumerable<Note>)[],
                .. pack.Bench.Plan is null ? [new Note.NoPlan(pack.Bench, BenchClasses.Of(lesson, profile))] : (IEnumerable<Note>)[],
                .. pack.Bench.Unlike is { Count: > 0 } unlike ? [new Note.Unlike(unlike, pack.Bench.Plan!.Class)] : (IEnumerable<Note>)[],
            ],
            []
        )
        {
            Open = [Index],
        };
    }
}
