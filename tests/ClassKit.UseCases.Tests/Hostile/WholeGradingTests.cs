using ClassKit.Grading.Results;
using ClassKit.UseCases.Grading;
using ClassKit.UseCases.Intake;
using ClassKit.UseCases.Running;
using ClassKit.UseCases.Tests.Samples;
using ClassKit.Wording.Files;

namespace ClassKit.UseCases.Tests.Hostile;

/// <summary>
/// Families of hostile files, each file through the whole of grading, from the folder to the last output. A good file beside them gets its
/// right grade, every file is accounted for, none is a mistake of ours, and nothing written tells where on the instructor's machine it lay.
/// </summary>
public sealed class WholeGradingTests
{
    /// <summary>Files that lie in one folder and are graded together.</summary>
    private const int Together = 40;

    private static readonly byte[] Good = SmallClass.Filled(SmallClass.Ben);

    [Fact]
    public void Fields_of_an_archives_headers() => Grade([.. ZipFields.Of("archive", () => Zip.Of(("ada.xlsx", Corpus.Workbook)))]);

    [Fact]
    public void Fields_of_a_workbooks_headers() =>
        Grade([.. ZipFields.Of("workbook", () => Corpus.Workbook), .. ZipFields.Of("open document", () => Corpus.OpenDocument)]);

    [Fact]
    public void Fields_of_zip64() =>
        Grade([
            .. ZipFields.Wide("archive", () => Zip.Of(("ada.xlsx", Corpus.Workbook))),
            .. ZipFields.Wide("part", () => Zip.Of(("xl/workbook.xml", Corpus.Workbook))),
        ]);

    [Fact]
    public void Names_in_archives() =>
        Grade([.. ArchiveNames.Files], file => Assert.True(file.Fate is FileFate.Graded or FileFate.OtherVersion, file.ToString()));

    [Fact]
    public void Parts_of_workbooks() => Grade([.. PartKinds.Files]);

    [Fact]
    public void The_corpus() => Grade([.. Corpus.Files.Where((_, at) => at % 9 == 4)]);

    [Fact]
    public void A_class_zip_whose_headers_are_broken_is_refused_with_a_remedy_or_graded()
    {
        using var folder = new TemporaryFolder();
        var whole = Zip.Of(("ben.xlsx", Good));
        foreach (var file in ZipFields.Of("class", () => whole).Concat(ZipFields.Wide("class", () => whole)))
        {
            var produced = GradeCommands.Grade(SmallClass.Dealt, folder.Write("class.zip", file.Make()));

            Assert.True(produced.Succeeded || produced.Problems is [{ Expected.Length: > 0 }], file.Name);
        }
    }

    private static void Grade(IReadOnlyList<HostileFile> family, Action<AccountedFile>? also = null)
    {
        foreach (var some in family.Chunk(Together))
        {
            using var folder = new TemporaryFolder();
            foreach (var (file, at) in some.Select((file, at) => (file, at)))
                folder.Write($"returned/{at} {file.Name}", file.Make());
            folder.Write("returned/ben.xlsx", Good);
            var graded = GradeClass.Run(new(SmallClass.Dealt, ReturnedFiles.At(folder.Of("returned")).Model!), Run.Unwatched);
            var grades = graded.Grades;

            Assert.All(some.Select((file, at) => $"{at} {file.Name}"), name =>
                Assert.Contains(grades.Files, file => file.File == name || file.File.StartsWith(name + "/", StringComparison.Ordinal))
            );
            Assert.All(grades.Files, file =>
                Assert.True(
                    file.Fault is null && (file.Fate is FileFate.Graded or FileFate.OtherVersion || UncountedWords.Of(file).Length > 0),
                    file.ToString()
                )
            );
            if (also is not null)
                Assert.All(grades.Files, also);
            var ben = grades.Students[1];
            Assert.Equal(("ben.xlsx", GradeStatus.Graded), (ben.File, ben.Status));
            Assert.All(ben.Answers, answer => Assert.Equal(Outcome.Sound, answer.Outcome));
            foreach (var made in GradeFiles.Of(graded))
            {
                if (!made.Path.EndsWith(".xlsx", StringComparison.Ordinal))
                    Assert.DoesNotContain(folder.Path, System.Text.Encoding.UTF8.GetString(made.Content), StringComparison.Ordinal);
                else
                    Assert.NotEmpty(made.Content);
            }
        }
    }
}
