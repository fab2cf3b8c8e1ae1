using System.IO.Compression;
using System.Security.Cryptography;
using System.Text;
using ClassKit.Grading;
using ClassKit.Grading.Results;
using ClassKit.UseCases.Grading;
using ClassKit.UseCases.Intake;
using ClassKit.UseCases.Running;
using ClassKit.UseCases.Tests.Samples;
using ClassKit.Wording.Files;

namespace ClassKit.UseCases.Tests.Intake;

public sealed class ReturnedFilesTests : IDisposable
{
    private static readonly byte[] AdasWork = SmallClass.Filled(SmallClass.Ada);
    private static readonly byte[] BensWork = SmallClass.Filled(SmallClass.Ben);
    private static readonly byte[] CleosWork = SmallClass.Filled(SmallClass.Cleo);

    private readonly TemporaryFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void Workbooks_are_found_in_folders_in_archives_and_in_archives_in_archives()
    {
        _folder.Write("week 3/Ada Berg_12345_assignsubmission/work.xlsx", AdasWork);
        _folder.Write(
            "bulk.zip",
            Zip.Of(("Ben Okoye/ben.zip", Zip.Of(("inner/final.xlsx", BensWork))), ("__MACOSX/._final.xlsx", [0, 5, 22, 7]))
        );
        _folder.Write("cleo.xlsx", Zip.Of(("cleo-marin.xlsx", CleosWork)));

        var grades = Grade(_folder.Path);

        Assert.Equal(
            [
                "week 3/Ada Berg_12345_assignsubmission/work.xlsx",
                "bulk.zip/Ben Okoye/ben.zip/inner/final.xlsx",
                "cleo.xlsx/cleo-marin.xlsx",
            ],
            grades.Students.Select(student => student.File)
        );
        Assert.All(grades.Students, student => Assert.All(student.Answers, answer => Assert.Equal(Outcome.Sound, answer.Outcome)));
        Assert.Equal(FileFate.Leftover, Assert.Single(grades.Unmatched).Fate);
    }

    /// <summary>
    /// Whoever is told that a file cannot be read puts a whole one in its place, which Windows refuses while it is open. A lock of one's
    /// own finds out here.
    /// </summary>
    [Fact]
    public void An_archive_that_is_refused_is_free_again()
    {
        _folder.Write("bulk.zip", [.. "PK\u0003\u0004"u8, .. new byte[200]]);
        for (var time = 0; time < 3; time++)
        {
            Assert.NotNull(Record.Exception(() => Grade(_folder.Of("bulk.zip"))));
            using var mine = new FileStream(_folder.Of("bulk.zip"), FileMode.Open, FileAccess.ReadWrite, FileShare.None);
        }
    }

    [Fact]
    public void A_folder_and_an_archive_of_it_give_the_same()
    {
        _folder.Write("returned/a/one.xlsx", AdasWork);
        _folder.Write("returned/b/two.zip", Zip.Of(("two.xlsx", BensWork)));
        ZipFile.CreateFromDirectory(_folder.Of("returned"), _folder.Of("returned.zip"));

        Assert.Equal(Grade(_folder.Of("returned")).Files, Grade(_folder.Of("returned.zip")).Files);
    }

    [Theory]
    [InlineData("~$ada-berg.xlsx")]
    [InlineData(".~lock.ada-berg.xlsx#")]
    [InlineData("__MACOSX/ada/._ada-berg.xlsx")]
    [InlineData("week 3/._ada-berg.xlsx")]
    [InlineData(".DS_Store")]
    [InlineData("a/Thumbs.db")]
    [InlineData("desktop.ini")]
    [InlineData("~WRL0001.tmp")]
    public void What_programs_leave_behind_is_listed_and_no_more(string path)
    {
        _folder.Write(path, [1, 2, 3]);

        var grades = Grade(_folder.Path);

        Assert.Equal((path, FileFate.Leftover), grades.Files.Select(file => (file.File, file.Fate)).Single());
        Assert.All(grades.Students, student => Assert.Equal((GradeStatus.Missing, 0), (student.Status, student.Flags.Count)));
    }

    [Fact]
    public void A_file_that_only_looks_like_a_lock_file_is_graded()
    {
        _folder.Write("~ada.xlsx", AdasWork);

        Assert.Equal(GradeStatus.Graded, Grade(_folder.Path).Students[0].Status);
    }

    [Fact]
    public void The_digest_is_that_of_the_file_and_the_file_is_unchanged()
    {
        var path = _folder.Write("ada.xlsx", AdasWork);
        var before = File.GetLastWriteTimeUtc(path);

        var file = Assert.Single(Grade(_folder.Path).Files);

        Assert.Equal(Convert.ToHexStringLower(SHA256.HashData(AdasWork)), file.Digest);
        Assert.Equal(AdasWork, File.ReadAllBytes(path));
        Assert.Equal(before, File.GetLastWriteTimeUtc(path));
    }

    [Fact]
    public void Archives_within_archives_are_opened_so_far_and_no_further()
    {
        var packed = AdasWork;
        for (var level = 1; level <= 4; level++)
            packed = Zip.Of(($"level {level}.xlsx", packed));
        _folder.Write("fine.zip", packed);
        _folder.Write("deep.zip", Zip.Of(("one more.zip", Zip.Of(("and another.zip", packed)))));

        var grades = Grade(_folder.Path);

        Assert.StartsWith("fine.zip/", grades.Students[0].File, StringComparison.Ordinal);
        Assert.Contains("More than 4 zip archives", UncountedWords.Of(Assert.Single(grades.Unmatched)), StringComparison.Ordinal);
    }

    [Fact]
    public void An_archive_full_of_archives_stops_by_itself()
    {
        var packed = Zip.Of(Enumerable.Range(0, 30).Select(at => ($"{at}.txt", new byte[1])));
        for (var level = 0; level < 3; level++)
            packed = Zip.Of(Enumerable.Range(0, 30).Select(at => ($"{at}.zip", packed)));
        _folder.Write("bomb.zip", packed);

        var grades = Grade(_folder.Path);

        Assert.InRange(grades.Files.Count, 1, IntakeLimits.Entries + 100);
        Assert.Contains(grades.Files, file => UncountedWords.Of(file).Contains("not looked at", StringComparison.Ordinal));
    }

    [Fact]
    public void An_archive_that_unpacks_to_far_more_than_it_is_stops_by_itself()
    {
        var zeros = new byte[40 * 1024 * 1024];
        _folder.Write("bomb.zip", Zip.Of(Enumerable.Range(0, 20).Select(at => ($"{at}.xlsx", zeros))));
        _folder.Write("ada.xlsx", AdasWork);

        var grades = Grade(_folder.Path);

        Assert.Equal(GradeStatus.Graded, grades.Students[0].Status);
        Assert.Equal(18, grades.Files.Count(file => UncountedWords.Of(file).Contains("Far more comes out", StringComparison.Ordinal)));
    }

    [Theory]
    [InlineData("password")]
    [InlineData("cut off")]
    [InlineData("no files")]
    public void An_archive_that_cannot_be_opened_is_refused_with_what_to_hand_in_instead(string kind)
    {
        var whole = Zip.Of(("ada.xlsx", AdasWork));
        _folder.Write(
            "Ada Berg.zip",
            kind switch
            {
                "password" => Zip.Encrypted(("ada.xlsx", AdasWork)),
                "cut off" => whole[..(whole.Length / 2)],
                _ => Zip.Of(("empty/", [])),
            }
        );

        var grades = Grade(_folder.Path);

        Assert.Equal(GradeStatus.Unreadable, grades.Students[0].Status);
        var reason = UncountedWords.Of(Assert.Single(grades.Files));
        Assert.Contains(kind, reason, StringComparison.Ordinal);
        Assert.Contains("Please hand in the workbook itself", reason, StringComparison.Ordinal);
    }

    [Fact]
    public void Names_in_an_archive_may_be_written_the_old_way()
    {
        // 437 is the code page of PKWARE's APPNOTE, D.1; í is 0xA1 there.
        var old = CodePagesEncodingProvider.Instance.GetEncoding(437)!;
        _folder.Write("returned.zip", Zip.Of(old, CompressionLevel.Fastest, ("Cleo Marín.pdf", "%PDF-1.7"u8.ToArray())));

        Assert.Equal(
            ("Cleo Marín.pdf", "cleo-marin"),
            Grade(_folder.Of("returned.zip")).Files.Select(file => (file.File, file.Student?.Id)).Single()
        );
    }

    [Fact]
    public void Names_that_lead_outside_are_shown_without_their_way_there()
    {
        _folder.Write("returned.zip", Zip.Of(("../../etc/ada-berg.xlsx", AdasWork), ("C:\\..\\ben-okoye.xlsx", BensWork)));

        Assert.Equal(["C:/ben-okoye.xlsx", "etc/ada-berg.xlsx"], Grade(_folder.Of("returned.zip")).Files.Select(file => file.File));
        Assert.Equal(["returned.zip"], Directory.EnumerateFileSystemEntries(_folder.Path).Select(Path.GetFileName));
    }

    [Fact]
    public void Grades_are_the_same_to_the_byte_on_any_number_of_threads()
    {
        for (var copy = 0; copy < 20; copy++)
        {
            _folder.Write($"{copy}/ada {copy}.xlsx", copy % 3 == 0 ? AdasWork : SmallClass.Blank(SmallClass.Ada));
            _folder.Write($"{copy}/ben.xlsx", copy % 2 == 0 ? BensWork : [1, 2, 3]);
        }

        Assert.Equal(Json(1), Json(8));

        string Json(int threads)
        {
            var grader = new ClassGrader(SmallClass.Dealt);
            return GradesJson.Write(
                grader.Settle(ParallelJudging.Judge(grader, ReturnedFiles.At(_folder.Path).Model!.Read(), Run.Unwatched, threads: threads))
            );
        }
    }

    [Fact]
    public void A_link_to_a_folder_is_named_and_not_followed()
    {
        _folder.Write("elsewhere/ada.xlsx", AdasWork);
        Directory.CreateDirectory(_folder.Of("returned"));
        Directory.CreateSymbolicLink(_folder.Of("returned", "round"), _folder.Of("returned"));

        var file = Assert.Single(Grade(_folder.Of("returned")).Files);

        Assert.Equal(("round", FileFate.Refused), (file.File, file.Fate));
    }

    [Fact]
    public void A_link_to_a_file_is_named_and_not_followed()
    {
        _folder.Write("elsewhere/ada.xlsx", AdasWork);
        Directory.CreateDirectory(_folder.Of("returned"));
        File.CreateSymbolicLink(_folder.Of("returned", "ada.xlsx"), _folder.Of("elsewhere", "ada.xlsx"));
        if (File.Exists("/dev/zero"))
            File.CreateSymbolicLink(_folder.Of("returned", "endless.xlsx"), "/dev/zero");

        Assert.All(Grade(_folder.Of("returned")).Files, file =>
        {
            Assert.Equal(FileFate.Refused, file.Fate);
            Assert.Contains("link to another place", UncountedWords.Of(file), StringComparison.Ordinal);
        });
    }

    [Fact]
    public void A_pipe_that_nobody_writes_to_holds_nothing_up()
    {
        if (!OperatingSystem.IsLinux())
            Assert.Skip("Named pipes lie in folders on Unix only; looked for Linux.");
        _folder.Write("returned/ada.xlsx", AdasWork);
        using (var made = System.Diagnostics.Process.Start("mkfifo", [_folder.Of("returned", "pipe.xlsx")]))
            made.WaitForExit();

        var files = Grade(_folder.Of("returned")).Files;

        Assert.Equal([FileFate.Graded, FileFate.Refused], files.Select(file => file.Fate));
    }

    private static ClassGrades Grade(string returned) => Graded.Of(returned);
}
