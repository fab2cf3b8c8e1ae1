using System.IO.Compression;
using System.Text;
using ClassKit.Notes;
using ClassKit.Records.Storage;
using ClassKit.UseCases.Dealing;
using ClassKit.UseCases.Erasing;
using ClassKit.UseCases.Grading;
using ClassKit.UseCases.Output.Writing;
using ClassKit.UseCases.Recording;
using ClassKit.UseCases.Running;
using ClassKit.UseCases.Tests.Samples;
using ClassKit.Workbooks.OnPaper;

namespace ClassKit.UseCases.Tests.Erasing;

/// <summary>A teaching folder as a term leaves it, and Ada Berg taken out of it in one step.</summary>
public sealed class StudentFilesTests : IDisposable
{
    private static readonly Author Kim = new(new(2026, 11, 30, 12, 0, 0, TimeSpan.Zero), "Kim", "asked for it");

    private static readonly string[] Adas = ["ada-berg", "Ada Berg", "ada.berg@example.org"];

    private readonly TemporaryFolder _folder = new();

    public StudentFilesTests()
    {
        Text("roster.csv", "id,name,email\nada-berg,Ada Berg,ada.berg@example.org\nben-okoye,Ben Okoye,\ncleo-marin,Cleo Marín,\n");
        Text("previous-roster-1.csv", "id,name\r\nben-okoye,Ben Okoye\r\nada-berg,Ada Berg\r\n");
        Text("term/marks.csv", "student,Safety\nada-berg,7\nBen Okoye,5\n");
        Text("prices.csv", "id,price\nada-berg,1\nflour,2\n");
        Text("notes.md", "Nobody here.\nAda Berg was away.\n");
        Text("ada-berg.md", "What we talked about.\n");
        OutputFolder.Write(_folder.Of("rounds/1/dealt"), DealPractice.Kind, [.. DealFiles.Of(SmallClass.Dealt)]);
        _folder.Write("rounds/1/returned/ada-berg.xlsx", SmallClass.Filled(SmallClass.Ada));
        _folder.Write("rounds/1/returned/Practice of mine.xlsx", SmallClass.Filled(SmallClass.Ada));
        _folder.Write("rounds/1/returned/ada-berg.pdf", [1]);
        _folder.Write("rounds/1/returned/ben-okoye.xlsx", SmallClass.Filled(SmallClass.Ben));
        _folder.Write("rounds/1/paper/paper-answers.xlsx", PaperWriter.Write(SmallClass.Dealt));
        Grade();
        Text("rounds/1/graded/corrections.csv", "student,part,points,reason\nada-berg,x.y,1,a\n");
    }

    public void Dispose() => _folder.Dispose();

    /// <summary>A follow-up went to another of the same name alone: whoever followed a list of its files would take it out of that one's hands.</summary>
    [Fact]
    public void What_was_made_for_a_namesake_alone_is_not_told_as_the_students()
    {
        Text("roster.csv", "id,name\nada-berg,Ada Berg\nada-2,Ada Berg\nben-okoye,Ben Okoye\n");
        var seat = SmallClass.Dealt.Students.First(seat => seat.Who.Id != SmallClass.Ada.Who.Id);
        OutputFolder.Write(
            _folder.Of("rounds/2/dealt"),
            DealPractice.Kind,
            [
                .. DealFiles.Of(
                    SmallClass.Dealt with
                    {
                        Students = [seat with { Who = new("ada-2", "Ada Berg"), Workbook = "workbooks/ada-2.xlsx" }],
                    }
                ),
            ]
        );

        var told = StudentFiles
            .Look(_folder.Path, _folder.Of("record.sqlite"), SmallClass.Ada.Who)
            .Traces.Select(trace => trace.File)
            .ToList();

        Assert.Contains("rounds/1/dealt/answer-key.html", told);
        Assert.DoesNotContain(told, file => file.StartsWith("rounds/2/", StringComparison.Ordinal));
    }

    /// <summary>A record of the year before lies in a folder of its own below this one: it is told of, and stays.</summary>
    [Fact]
    public void A_record_of_another_folder_that_names_the_student_is_told()
    {
        foreach (var place in new[] { "", "last-year", "other" })
        {
            Directory.CreateDirectory(_folder.Of(place));
            using var record = TeachingRecord.Open(RecordPlace.Of(_folder.Of(place)), Kim.Now, mayBegin: true);
            if (place != "other")
                Assert.Empty(
                    EnterGrades
                        .Run(
                            new(record, Kim, null, GradedFolder.Read(_folder.Of("rounds/1/graded"), SmallClass.Dealt).Model!),
                            Run.Unwatched
                        )
                        .Problems
                );
        }

        var traces = StudentFiles
            .Look(_folder.Path, RecordPlace.Of(_folder.Path), new("ada-berg", "Ada Berg", "ada.berg@example.org"))
            .Traces;

        Assert.Equal(["last-year/record.sqlite"], traces.OfType<StudentTrace.OtherRecord>().Select(trace => trace.File));
    }

    [Fact]
    public void One_step_takes_a_student_out_of_every_file_that_can_be_changed_and_names_the_rest()
    {
        var before = Digests();
        using var record = TeachingRecord.InMemory();
        Assert.Empty(
            EnterGrades
                .Run(new(record, Kim, null, GradedFolder.Read(_folder.Of("rounds/1/graded"), SmallClass.Dealt).Model!), Run.Unwatched)
                .Problems
        );

        var told = Erase(record, isMeant: false);
        Assert.Equal(before, Digests());
        var done = Erase(record, isMeant: true);

        Assert.Equal(told.Traces, done.Traces, (one, other) => one.GetType() == other.GetType() && one.File == other.File);
        Assert.Equal(
            [
                "rounds/1/dealt/sheets/ada-berg.html",
                "rounds/1/dealt/workbooks/ada-berg.xlsx",
                "rounds/1/graded/feedback/ada-berg.html",
                "rounds/1/returned/Practice of mine.xlsx",
                "rounds/1/returned/ada-berg.pdf",
                "rounds/1/returned/ada-berg.xlsx",
            ],
            done.Traces.OfType<StudentTrace.Theirs>().Select(trace => trace.File)
        );
        Assert.Equal(
            [
                "previous-roster-1.csv",
                "roster.csv",
                "rounds/1/graded/corrections.csv",
                "rounds/1/paper/paper-answers.xlsx",
                "term/marks.csv",
            ],
            done.Traces.OfType<StudentTrace.Rows>().Select(trace => trace.File)
        );
        Assert.Equal(["ada-berg.md", "notes.md", "prices.csv"], done.Traces.OfType<StudentTrace.Stays>().Select(trace => trace.File));
        Assert.Equal([2], done.Traces.OfType<StudentTrace.Stays>().Single(trace => trace.File == "notes.md").Lines);

        // Nothing else in the whole folder names her, however deep, and what is others' is as it was byte for byte.
        var stays = done.Traces.OfType<StudentTrace.Stays>().Select(trace => trace.File).ToHashSet();
        Assert.All(Files().Where(file => !stays.Contains(file)), file =>
            Assert.All(Adas, word => Assert.False(Holds(file, word), $"{file} holds {word}"))
        );
        var changed = done.Traces.Select(trace => trace.File).Except(stays).ToHashSet();
        var after = Digests();
        Assert.All(before.Where(file => !changed.Contains(file.Key) && !file.Key.Contains(".classkit-", StringComparison.Ordinal)), file =>
            Assert.Equal(file.Value, after[file.Key])
        );
        Assert.Equal("id,name,email\nben-okoye,Ben Okoye,\ncleo-marin,Cleo Marín,\n", File.ReadAllText(_folder.Of("roster.csv")));
    }

    /// <summary>
    /// Of archives what is the student's goes, however deep, and every other entry stays byte for byte; what only a person can change is
    /// named with what to do there.
    /// </summary>
    [Fact]
    public void A_student_is_taken_out_of_archives_and_lists_in_other_letters_and_the_rest_is_said_file_by_file()
    {
        byte[] others = SmallClass.Filled(SmallClass.Ben),
            notes = "Ada Berg was away.\n"u8.ToArray();
        var inner = Zip.Of(("Practice of mine.xlsx", SmallClass.Filled(SmallClass.Ada)), ("ben-okoye.xlsx", others));
        _folder.Write(
            "mail/all.zip",
            Zip.Of(
                ("work/ada-berg.xlsx", SmallClass.Filled(SmallClass.Ada)),
                ("work/ada-berg.jpg", [1]),
                ("work/ben-okoye.xlsx", others),
                ("inner.zip", inner),
                ("list.csv", "student\nada-berg\nben-okoye\n"u8.ToArray()),
                ("notes.txt", notes),
                ("broken.xlsx", [1, 2])
            )
        );
        _folder.Write("mail/locked.zip", Zip.Encrypted(("ada-berg.xlsx", others)));
        // Of two files by one name only one could be kept: such an archive stays as it is, and so does what it lies in.
        _folder.Write(
            "mail/twice.zip",
            Zip.Of(("packed.zip", Zip.Of(("ada-berg.xlsx", SmallClass.Filled(SmallClass.Ada)), ("a.txt", [1]), ("a.txt", [2]))))
        );
        _folder.Write("mail/others.zip", Zip.Of(("ben-okoye.xlsx", others)));
        _folder.Write(
            "mail/list of spring.csv",
            Encoding.Latin1.GetBytes("student;name\r\nada-berg;Ada Berg\r\ncleo-marin;Cleo Marín\r\n")
        );
        _folder.Write("mail/broken.xlsx", [1, 2]);
        var before = Digests();

        var done = Erase(null, isMeant: true);

        Assert.Contains(new StudentTrace.Packed("mail/all.zip", 3, 1), done.Traces);
        Assert.Contains(new StudentTrace.Rows("mail/list of spring.csv", 1), done.Traces);
        Assert.Equal(
            Encoding.Latin1.GetBytes("student;name\r\ncleo-marin;Cleo Marín\r\n"),
            File.ReadAllBytes(_folder.Of("mail/list of spring.csv"))
        );
        Assert.Equal(["notes.txt"], done.Traces.OfType<StudentTrace.Stays>().Single(trace => trace.File == "mail/all.zip").Inside);
        Assert.Equal(["ada-berg.xlsx"], done.Traces.OfType<StudentTrace.Stays>().Single(trace => trace.File == "mail/locked.zip").Inside);
        Assert.Equal(
            [("mail/all.zip", "broken.xlsx"), ("mail/broken.xlsx", "")],
            done.Traces.OfType<StudentTrace.Unread>().Select(trace => (trace.File, string.Join(' ', trace.Inside)))
        );
        Assert.Equal(["packed.zip"], done.Traces.OfType<StudentTrace.Stays>().Single(trace => trace.File == "mail/twice.zip").Inside);
        Assert.DoesNotContain(done.Traces.OfType<StudentTrace.Packed>(), trace => trace.File == "mail/twice.zip");
        Assert.All(["mail/others.zip", "mail/twice.zip"], file => Assert.Equal(before[file], Digests()[file]));

        using var left = ZipFile.OpenRead(_folder.Of("mail/all.zip"));
        Assert.Equal(
            ["work/ben-okoye.xlsx", "inner.zip", "list.csv", "notes.txt", "broken.xlsx"],
            left.Entries.Select(entry => entry.FullName)
        );
        Assert.Equal(others, Content(left, "work/ben-okoye.xlsx"));
        Assert.Equal(notes, Content(left, "notes.txt"));
        Assert.Equal("student\nben-okoye\n"u8.ToArray(), Content(left, "list.csv"));
        using var inside = new ZipArchive(new MemoryStream(Content(left, "inner.zip")));
        Assert.Equal(["ben-okoye.xlsx"], inside.Entries.Select(entry => entry.FullName));
        Assert.Equal(others, Content(inside, "ben-okoye.xlsx"));

        static byte[] Content(ZipArchive archive, string name)
        {
            using var stream = archive.GetEntry(name)!.Open();
            using var bytes = new MemoryStream();
            stream.CopyTo(bytes);
            return bytes.ToArray();
        }
    }

    [Fact]
    public void What_is_left_is_whole_and_can_be_graded_again()
    {
        Erase(null, isMeant: true);

        Assert.Equal(
            ["ben-okoye", "cleo-marin"],
            DealtFolder.Read(_folder.Of("rounds/1/dealt")).Model!.Students.Select(seat => seat.Who.Id)
        );
        Assert.Empty(OutputFolder.Changed(_folder.Of("rounds/1/dealt"), [DealFiles.AnswerKey, "workbooks/ben-okoye.xlsx"]));
        var written = Grade();
        Assert.Empty(written.Problems);
        Assert.DoesNotContain(written.Notes, note => note is Note.KeptAside);
        Assert.Equal(
            ["ben-okoye", "cleo-marin"],
            GradedFolder.Read(_folder.Of("rounds/1/graded"), null).Model!.Students.Select(student => student.Who.Id)
        );
    }

    [Fact]
    public void Cut_off_before_the_class_list_it_goes_on_when_it_is_done_again()
    {
        StudentFiles.Look(_folder.Path, RecordPlace.Of(_folder.Path), StudentFiles.Find(_folder.Path, "ada-berg")!).TakeOutOfFiles();
        Assert.True(Holds("roster.csv", "Ada Berg"));

        var done = Erase(null, isMeant: true);

        Assert.Equal(["previous-roster-1.csv", "roster.csv"], done.Traces.OfType<StudentTrace.Rows>().Select(trace => trace.File));
        Assert.False(Holds("roster.csv", "Ada Berg"));
        Assert.Contains(
            "knows nobody",
            Assert
                .Single(
                    EraseStudent
                        .Run(new(null, Kim, "ada-berg", IsMeant: true) { Folder = _folder.Path, WithFiles = true }, Run.Unwatched)
                        .Problems
                )
                .Found,
            StringComparison.Ordinal
        );
    }

    /// <summary>A class list may be called anything: the class names it. It knows the student until all else is done.</summary>
    [Fact]
    public void A_list_that_the_class_names_goes_last_whatever_it_is_called()
    {
        foreach (var list in new[] { "roster.csv", "previous-roster-1.csv" })
            File.Delete(_folder.Of(list));
        Directory.Delete(_folder.Of("rounds"), recursive: true);
        Text("bakers.csv", "id,name\nada-berg,Ada Berg\nben-okoye,Ben Okoye\n");
        Text(
            "class.md",
            File.ReadAllText(Repository.PathOf("demo-cohort", "class.md")).ReplaceLineEndings("\n")[..4]
                + "roster: bakers.csv\npieces per team: 6\n---\n\n# Bakers\n"
        );

        StudentFiles.Look(_folder.Path, RecordPlace.Of(_folder.Path), StudentFiles.Find(_folder.Path, "ada-berg")!).TakeOutOfFiles();
        Assert.False(Holds("term/marks.csv", "ada-berg"));
        Assert.True(Holds("bakers.csv", "Ada Berg"));
        Erase(null, isMeant: true);

        Assert.False(Holds("bakers.csv", "Ada Berg"));
    }

    [Fact]
    public void What_somebody_changed_since_it_was_looked_at_is_not_written_over()
    {
        var looked = StudentFiles.Look(_folder.Path, RecordPlace.Of(_folder.Path), StudentFiles.Find(_folder.Path, "ada-berg")!);
        Text("term/marks.csv", "student,Safety\nada-berg,7\nBen Okoye,5.5\n");

        Assert.Contains(
            "marks.csv was changed meanwhile",
            Assert.Throws<IOException>(looked.TakeOutOfFiles).Message,
            StringComparison.Ordinal
        );

        Erase(null, isMeant: true);
        Assert.Equal("student,Safety\nBen Okoye,5.5\n", File.ReadAllText(_folder.Of("term/marks.csv")));
    }

    [Fact]
    public void A_deal_that_cannot_be_read_is_said_to_be_so()
    {
        Text("rounds/2/dealt/dealt.json", "{\"version\":");

        Assert.Contains(Erase(null, isMeant: false).Traces.OfType<StudentTrace.Unread>(), trace =>
            trace.File == "rounds/2/dealt/dealt.json"
        );
    }

    [Fact]
    public void A_file_of_ours_that_the_instructor_changed_is_not_written_over()
    {
        var page = _folder.Of("rounds/1/graded/class-report.html");
        File.AppendAllText(page, "<!-- Ada Berg: talk to her -->");

        var done = Erase(null, isMeant: true);

        Assert.Contains(done.Traces.OfType<StudentTrace.Stays>(), trace => trace.File == "rounds/1/graded/class-report.html");
        Assert.EndsWith("<!-- Ada Berg: talk to her -->", File.ReadAllText(page), StringComparison.Ordinal);
    }

    [Fact]
    public void All_that_was_written_out_of_one_student_goes_and_tables_of_the_whole_record_are_made_once_more()
    {
        using var record = TeachingRecord.InMemory();
        Assert.Empty(
            EnterGrades
                .Run(new(record, Kim, null, GradedFolder.Read(_folder.Of("rounds/1/graded"), SmallClass.Dealt).Model!), Run.Unwatched)
                .Problems
        );
        OutputFolder.Write(
            _folder.Of("shown"),
            ShowStudent.Kind,
            ShowStudent.Write(ShowStudent.Run(new(record, "ada-berg"), Run.Unwatched).Model!).Files
        );
        OutputFolder.Write(
            _folder.Of("tables"),
            WriteOutRecord.Kind,
            [new("student.csv", "id,name\nada-berg,Ada Berg\nben-okoye,Ben Okoye\n"u8.ToArray())]
        );

        var done = Erase(record, isMeant: true);

        Assert.Empty(Directory.EnumerateFiles(_folder.Of("shown"), "*.csv"));
        Assert.Contains(new StudentTrace.MadeOfAll("tables/student.csv", WriteOutRecord.Kind), done.Traces);
        Assert.True(Holds("tables/student.csv", "ada-berg"));
    }

    [Fact]
    public void What_a_link_leads_to_is_not_the_folders()
    {
        if (OperatingSystem.IsWindows())
            return;
        using var elsewhere = new TemporaryFolder();
        elsewhere.Write("roster.csv", Encoding.UTF8.GetBytes("id,name\nada-berg,Ada Berg\nben-okoye,Ben Okoye\n"));
        Directory.CreateSymbolicLink(_folder.Of("linked"), elsewhere.Path);
        File.CreateSymbolicLink(_folder.Of("roster-linked.csv"), elsewhere.Of("roster.csv"));

        Erase(null, isMeant: true);

        Assert.Contains("Ada Berg", File.ReadAllText(elsewhere.Of("roster.csv")), StringComparison.Ordinal);
    }

    private ErasedStudent Erase(TeachingRecord? record, bool isMeant)
    {
        var reading = EraseStudent.Run(new(record, Kim, "ada-berg", isMeant) { Folder = _folder.Path, WithFiles = true }, Run.Unwatched);
        Assert.Empty(reading.Problems);
        return reading.Model!;
    }

    private Written Grade()
    {
        var graded = _folder.Of("rounds/1/graded");
        return OutputFolder.Write(new(graded, GradeClass.Kind), () =>
            GradeCommands.Grade(new(_folder.Of("rounds/1/dealt"), _folder.Of("rounds/1/returned")) { Graded = graded })
        );
    }

    private void Text(string path, string text) => _folder.Write(path, Encoding.UTF8.GetBytes(text));

    private IEnumerable<string> Files() =>
        Directory.EnumerateFiles(_folder.Path, "*", SearchOption.AllDirectories).Select(file => Path.GetRelativePath(_folder.Path, file));

    private Dictionary<string, string> Digests() =>
        Files()
            .ToDictionary(
                file => file,
                file => Convert.ToHexString(System.Security.Cryptography.SHA256.HashData(File.ReadAllBytes(_folder.Of(file))))
            );

    /// <summary>Looks into workbooks part by part.</summary>
    private bool Holds(string file, string word)
    {
        if (file.Contains(word, StringComparison.OrdinalIgnoreCase))
            return true;
        if (Path.GetExtension(file) != ".xlsx")
            return File.ReadAllText(_folder.Of(file)).Contains(word, StringComparison.OrdinalIgnoreCase);
        using var book = ZipFile.OpenRead(_folder.Of(file));
        return book.Entries.Any(entry =>
        {
            using var text = new StreamReader(entry.Open());
            return text.ReadToEnd().Contains(word, StringComparison.OrdinalIgnoreCase);
        });
    }
}
