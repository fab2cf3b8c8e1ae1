using ClassKit.Exercises.Deadlines;
using ClassKit.Grading.Findings;
using ClassKit.UseCases.Grading;
using ClassKit.UseCases.Intake;
using ClassKit.UseCases.Running;
using ClassKit.UseCases.Tests.Samples;

namespace ClassKit.UseCases.Tests.Intake;

/// <summary>A file came no later than its own date says, and than that of the archive that it lies in.</summary>
public sealed class ArrivalTests : IDisposable
{
    private static readonly DateTime Early = new(2026, 2, 1, 12, 0, 0, DateTimeKind.Utc);
    private static readonly DateTime Late = new(2026, 2, 8, 12, 0, 0, DateTimeKind.Utc);

    private readonly TemporaryFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void What_lies_in_an_archive_is_as_old_as_the_older_of_both()
    {
        Assert.Equal(Early, Of(Early).OutOf(Late).Dated);
        Assert.Equal(Early, Of(Late).OutOf(Early).Dated);
        Assert.Equal(Early, Of(Early).OutOf(null).Dated);
        Assert.Equal(Early, Of(null).OutOf(Early).Dated);
        Assert.Equal(Late, Of(new(1980, 1, 1)).OutOf(Late).Dated);

        static ReturnedItem Of(DateTime? dated) => new("ada.xlsx", [1], null, dated);
    }

    /// <summary>Due long ago, saved by its own word in 2031, and here today: alone, in an archive, and in an archive of archives.</summary>
    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(2)]
    public void A_workbook_that_was_saved_after_it_came_is_asked_about(int archives)
    {
        var (name, bytes) = ("ada-berg.xlsx", SavedIn2031(SmallClass.Filled(SmallClass.Ada)));
        for (var around = 0; around < archives; around++)
            (name, bytes) = ($"all{around}.zip", Zip.Of((name, bytes)));
        _folder.Write($"back/{name}", bytes);
        File.SetLastWriteTimeUtc(_folder.Of("back", name), Early);
        var due = DueWish.Parse("2026-01-01T12:00")!.In(null);

        var graded = GradeClass.Run(
            new(SmallClass.Dealt, ReturnedFiles.At(_folder.Of("back")).Model!) { Deadline = new(due) },
            Run.Unwatched
        );

        var ada = graded.Grades.Students[0];
        Assert.Equal(Early, Assert.Single(ada.Flags.OfType<Flag.SavedAfterItCame>()).Dated);
        Assert.Null(ada.Late);
    }

    /// <summary>The same workbook, with another time inside.</summary>
    private static byte[] SavedIn2031(byte[] workbook)
    {
        using var stream = new MemoryStream();
        stream.Write(workbook);
        using (var zip = new System.IO.Compression.ZipArchive(stream, System.IO.Compression.ZipArchiveMode.Update, leaveOpen: true))
        {
            var part = zip.GetEntry("docProps/core.xml")!;
            string text;
            using (var reader = new StreamReader(part.Open()))
                text = reader.ReadToEnd();
            part.Delete();
            using var writer = new StreamWriter(zip.CreateEntry("docProps/core.xml").Open());
            writer.Write(text.Insert(text.LastIndexOf("</", StringComparison.Ordinal), "<modified>2031-01-01T00:00:00Z</modified>"));
        }
        return stream.ToArray();
    }
}
