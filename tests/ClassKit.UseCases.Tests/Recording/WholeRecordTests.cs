using System.Text;
using ClassKit.Exercises.Dealing;
using ClassKit.Notes;
using ClassKit.Records.Classes;
using ClassKit.Records.Storage;
using ClassKit.UseCases.Dealing;
using ClassKit.UseCases.Recording;
using ClassKit.UseCases.Running;
using ClassKit.UseCases.Tests.Records;
using ClassKit.UseCases.Tests.Samples;
using ClassKit.UseCases.Touring;
using Microsoft.Data.Sqlite;

namespace ClassKit.UseCases.Tests.Recording;

/// <summary>A record with something in every table: written out and read back, with a student erased, and moved.</summary>
public sealed class WholeRecordTests : IDisposable
{
    private static readonly Author Kim = new(new(2026, 11, 29, 12, 0, 0, TimeSpan.Zero), "Kim", "=why, “so”\r\n'and how'");

    private static readonly DealtClass Small = DealtJson.Read("dealt.json", DealtJson.Write(SmallClass.Dealt)).Model!;

    private readonly TemporaryFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void Tables_that_were_written_out_fill_an_empty_record_equal_row_for_row()
    {
        using (var record = Filled("one"))
        {
            var files = WriteOut(record);
            using var other = Open("two");
            var read = ReadBackRecord.Run(
                new(other, "tables", name => files.TryGetValue(name, out var bytes) ? new MemoryStream(bytes) : null),
                Run.Unwatched
            );

            Assert.Empty(read.Problems);
            Assert.Equal(
                files.ToDictionary(file => file.Key, file => Encoding.UTF8.GetString(file.Value)),
                WriteOut(other).ToDictionary(file => file.Key, file => Encoding.UTF8.GetString(file.Value))
            );
            Assert.Equal(
                ["changed_row", "lesson_given", "observation", "arrangement", "frozen_grade", "frozen_work", "bench_mark", "graded"],
                new[]
                {
                    "changed_row",
                    "lesson_given",
                    "observation",
                    "arrangement",
                    "frozen_grade",
                    "frozen_work",
                    "bench_mark",
                    "graded",
                }.Where(table => Rows(other, table) > 0)
            );
            Assert.Contains(
                "holds something already",
                Assert
                    .Single(ReadBackRecord.Run(new(other, "tables", name => new MemoryStream(files[name])), Run.Unwatched).Problems)
                    .Found,
                StringComparison.Ordinal
            );
        }
        using var database = new SqliteConnection($"Data Source={_folder.Of("one", TeachingRecord.FileName)};Pooling=False");
        database.Open();
        Ask(database, $"ATTACH '{_folder.Of("two", TeachingRecord.FileName)}' AS other");
        foreach (var table in Names(database))
        {
            Assert.Equal(0, Ask(database, $"SELECT count(*) FROM (SELECT * FROM main.{table} EXCEPT SELECT * FROM other.{table})"));
            Assert.Equal(0, Ask(database, $"SELECT count(*) FROM (SELECT * FROM other.{table} EXCEPT SELECT * FROM main.{table})"));
        }
    }

    [Theory]
    [InlineData("version.csv", "version\r\n99\r\n", "of version 99")]
    [InlineData("student.csv", "id,name\r\n", "It is missing, or its columns are others")]
    [InlineData("student.csv", "id,name,email\r\nada,\r\n", "The row does not fit in")]
    [InlineData("enrolment.csv", "class,student,since,until\r\n1,nobody,2026-01-01,\r\n", "that is not there")]
    [InlineData("enrolment.csv", "class,student,since,until\r\none,nobody,2026-01-01,\r\n", "The row does not fit in")]
    public void Tables_that_were_tampered_with_are_refused_and_nothing_is_written(string file, string text, string said)
    {
        using var record = TeachingRecord.InMemory();
        var files = WriteOut(record);
        files[file] = Encoding.UTF8.GetBytes(text);

        var read = ReadBackRecord.Run(new(record, "tables", name => new MemoryStream(files[name])), Run.Unwatched);

        Assert.Contains(said, Assert.Single(read.Problems).Found, StringComparison.Ordinal);
        Assert.Equal(0, Rows(record, "student") + Rows(record, "enrolment"));
    }

    /// <summary>
    /// Whoever asks what is held of them gets a row of every table that names them: a table of a later version that nobody shows fails
    /// here. Files and typed points are those of the grading that stands.
    /// </summary>
    [Fact]
    public void A_student_is_shown_what_every_table_that_names_them_holds()
    {
        var shownIn = new Dictionary<string, string>
        {
            ["enrolment"] = "student.csv",
            ["changed_row"] = "changes.csv",
            ["deal_seat"] = "numbers.csv",
            ["graded"] = "works.csv",
            ["returned_file"] = "files.csv",
            ["gradebook_point"] = "typed-points.csv",
            ["typed_mark"] = "marks.csv",
            ["bench_mark"] = "bench-marks.csv",
            ["arrangement"] = "arrangements.csv",
            ["frozen_grade"] = "grades-given-out.csv",
        };
        using var record = Filled("one");
        record.Write(new(Kim.Now, "Kim", "test", "", ""), session =>
        {
            var work = session.Number("SELECT id FROM work WHERE kind = 'TypedMarks'");
            session.Run(
                "INSERT INTO typed_mark (work, sitting, student, state, points, out_of, lateness, change) VALUES ($1, 1, 'ben-okoye', 'Marked', '7.125', '12', 'Late', $2)",
                work,
                session.ChangeId
            );
            var mark = session.Insert(
                "INSERT INTO bench_mark (sheet, student, comment, change) SELECT id, 'ben-okoye', 'wet sleeve', $1 FROM bench_sheet LIMIT 1",
                session.ChangeId
            );
            session.Run(
                """
                INSERT INTO bench_mark_level (mark, criterion, work, level) SELECT $1, seen.place, seen.work, iif(seen.place = 4, NULL, seen.place % 4)
                FROM bench_criterion AS seen JOIN bench_sheet ON bench_sheet.work = seen.work JOIN bench_mark ON bench_mark.sheet = bench_sheet.id WHERE bench_mark.id = $1
                """,
                mark
            );
            return true;
        });
        var holding = record.Read(session =>
            session.Query(
                "SELECT DISTINCT m.name FROM sqlite_schema AS m JOIN pragma_foreign_key_list(m.name) AS k WHERE k.\"table\" = 'student'",
                row => row.Text(0)
            )
        );
        Assert.Equal(shownIn.Keys.Order(), holding.Order());

        var files = ShowStudent
            .Write(ShowStudent.Run(new(record, "ben-okoye"), Run.Unwatched).Model!)
            .Files.ToDictionary(
                file => file.Path,
                file => Encoding.UTF8.GetString(file.Content).Split('\n', StringSplitOptions.RemoveEmptyEntries)
            );

        bool Holds(string table) =>
            record.Read(session =>
                session.Number(
                    $"SELECT count(*) FROM {table} WHERE student = 'ben-okoye'{(table is "returned_file" or "gradebook_point" ? " AND grading = (SELECT max(id) FROM grading)" : "")}"
                )
            ) > 0;
        Assert.All(shownIn.Where(table => Holds(table.Key)), table => Assert.True(files[table.Value].Length > 1, table.Value));
        Assert.Contains(",7.125,12,yes,", Assert.Single(files["marks.csv"].Skip(1)), StringComparison.Ordinal);
        Assert.Equal(8, files["bench-marks.csv"].Count(row => row.Contains("wet sleeve", StringComparison.Ordinal)));
        Assert.Contains("good,81.5,82,", string.Concat(files["grades-given-out.csv"]), StringComparison.Ordinal);
    }

    [Fact]
    public void Of_an_erased_student_nothing_is_left_but_points_that_are_nobodys()
    {
        string[] names = ["ada-berg", "Ada Berg"];
        using (var record = Filled("one"))
        {
            var graded = Rows(record, "graded");
            var answers = Rows(record, "answer");
            record.BackUp(Kim.Now);

            var seen = EraseStudent.Run(new(record, Kim, "ada-berg", IsMeant: false), Run.Unwatched).Model!;
            Assert.Contains(names[1], Everything(record), StringComparison.Ordinal);
            var done = EraseStudent.Run(new(record, Kim, "ada-berg", IsMeant: true), Run.Unwatched).Model!;

            Assert.Equal(seen.Erased! with { Classes = done.Erased!.Classes }, done.Erased);
            Assert.Single(done.Backups);
            Assert.True(done.Erased.Kept > 0);
            Assert.Equal((graded, answers), (Rows(record, "graded"), Rows(record, "answer")));
            Assert.All(names, name => Assert.DoesNotContain(name, Everything(record), StringComparison.OrdinalIgnoreCase));
            Assert.Equal(
                ["ben-okoye", "cleo-marin"],
                record.Read(session => RecordedGrades.Of(session, Small.Identity!.Digest))!.Students.Select(student => student.Who.Id)
            );
        }
        Assert.All(Directory.GetFiles(_folder.Of("one")).Select(File.ReadAllBytes), bytes =>
            Assert.All(names, name => Assert.True(bytes.AsSpan().IndexOf(Encoding.UTF8.GetBytes(name)) < 0))
        );
    }

    [Fact]
    public void Graded_again_a_class_keeps_what_an_erased_student_came_to_as_nobodys()
    {
        using var record = Filled("one");
        EraseStudent.Run(new(record, Kim, "ada-berg", IsMeant: true), Run.Unwatched);
        var again = AnyGrades.Of(Small, 77);

        Assert.Empty(
            EnterGrades
                .Run(new(record, Kim, null, again with { Dealt = again.Dealt with { Identity = Small.Identity } }), Run.Unwatched)
                .Problems
        );

        Assert.Equal(
            ["ben-okoye", "cleo-marin", "nobody"],
            record.Read(session =>
                session.Query(
                    "SELECT coalesce(student, 'nobody') FROM graded WHERE grading = (SELECT max(id) FROM grading) ORDER BY place",
                    row => row.Text(0)
                )
            )
        );
        Assert.Equal(
            ["ben-okoye", "cleo-marin"],
            record.Read(session => RecordedGrades.Of(session, Small.Identity!.Digest))!.Students.Select(student => student.Who.Id)
        );
    }

    [Fact]
    public void Files_that_still_name_whoever_is_erased_are_told_and_left_as_they_are()
    {
        var list = _folder.Write("teaching/roster.csv", "id,name\nada-berg,Ada Berg\nben-okoye,Ben Okoye\n"u8.ToArray());
        _folder.Write("teaching/notes.md", "Nobody.\n"u8.ToArray());
        using var record = Filled("one");

        var done = EraseStudent.Run(new(record, Kim, "ada-berg", IsMeant: true) { Folder = _folder.Of("teaching") }, Run.Unwatched).Model!;

        Assert.Equal([new StudentTrace.Rows("roster.csv", 1)], done.Traces);
        Assert.Equal(
            new Note.StillNamed(done.Traces, TraceFate.Untouched),
            Assert.Single(EraseStudent.Write(done).Notes.OfType<Note.StillNamed>())
        );
        Assert.Contains("Ada Berg", File.ReadAllText(list), StringComparison.Ordinal);
        Assert.Empty(EraseStudent.Write(done with { Traces = [] }).Notes.OfType<Note.StillNamed>());
    }

    /// <summary>
    /// The database writes what is erased out of its file only when nobody needs the old pages (SQLite, PRAGMA wal_checkpoint): until then it
    /// is said, and whoever erases once more need not have the student on record.
    /// </summary>
    [Fact]
    public void Bytes_that_somebody_who_reads_holds_in_the_file_are_told_until_they_are_gone()
    {
        using var record = Filled("one");
        using var reader = Open("one");
        using (var look = reader.Look())
        {
            Assert.NotNull(ClassRegister.FindStudent(look, "ada-berg"));
            var held = EraseStudent.Run(new(record, Kim, "ada-berg", IsMeant: true), Run.Unwatched).Model!;
            Assert.Contains(new Note.BytesLeft("ada-berg", StillInFile.OthersRead), EraseStudent.Write(held).Notes);
        }

        var again = EraseStudent.Run(new(record, Kim, "ada-berg", IsMeant: true), Run.Unwatched).Model!;

        Assert.Equal(["NotOnRecord"], EraseStudent.Write(again).Notes.Select(note => note.GetType().Name));
        Assert.NotEmpty(EraseStudent.Run(new(record, Kim, "zoe-unknown", IsMeant: true), Run.Unwatched).Problems);
    }

    [Fact]
    public void A_moved_record_is_found_from_the_teaching_folder()
    {
        using (Filled("one")) { }
        var moved = MoveRecord.Run(new(_folder.Of("one"), _folder.Of("safe", "place"), Kim.Now), Run.Unwatched).Model!;

        Assert.Equal(_folder.Of("safe", "place", TeachingRecord.FileName), moved.Path);
        Assert.False(File.Exists(_folder.Of("one", TeachingRecord.FileName)));
        using var record = Open("one");
        Assert.Equal(moved.Path, record.Path);
        Assert.True(Rows(record, "graded") > 0);
        Assert.Contains(
            "is a file here already",
            Assert.Single(MoveRecord.Run(new(_folder.Of("one"), _folder.Of("safe", "place"), Kim.Now), Run.Unwatched).Problems).Found,
            StringComparison.Ordinal
        );
    }

    /// <summary>
    /// Cut off at the moment that matters most, between the copy and the end of the old file: the record that is found is whole, and none
    /// begins anew in its place.
    /// </summary>
    [Fact]
    public void A_move_that_is_cut_off_loses_nothing_from_sight()
    {
        using (Filled("one")) { }
        Directory.CreateDirectory(_folder.Of("safe"));
        var to = _folder.Of("safe", TeachingRecord.FileName);
        using (var record = Open("one"))
        {
            Assert.Throws<IOException>(() => record.MoveTo(to, () =>
                {
                    File.WriteAllText(_folder.Of("one", RecordPlace.KeptElsewhere), to + "\n");
                    throw new IOException("cut off");
                }));
            Assert.True(File.Exists(record.Path));
        }
        using var found = Open("one");
        Assert.Equal(to, found.Path);
        Assert.True(Rows(found, "graded") > 0);
    }

    /// <summary>The file that would say where it is, is at fault there, and not the record.</summary>
    [Fact]
    public void A_move_that_nothing_can_point_to_is_told_by_the_file_that_points()
    {
        using (Filled("one")) { }
        var pointer = Directory.CreateDirectory(_folder.Of("one", RecordPlace.KeptElsewhere)).FullName;

        var problem = Assert.Single(MoveRecord.Run(new(_folder.Of("one"), _folder.Of("safe"), Kim.Now), Run.Unwatched).Problems);

        Assert.Equal(pointer, problem.File);
        using var record = Open("one");
        Assert.Equal(_folder.Of("one", TeachingRecord.FileName), record.Path);
        Assert.True(Rows(record, "graded") > 0);
    }

    /// <summary>The table is at fault, and not the record that it is read into.</summary>
    [Fact]
    public void A_table_that_cannot_be_read_is_told_as_the_table()
    {
        using var filled = Filled("one");
        var files = WriteOut(filled);
        using var record = Open("two");

        var problem = Assert.Single(
            ReadBackRecord
                .Run(
                    new(record, "tables", name =>
                        name == WriteOutRecord.FileOf("graded") ? throw new IOException("locked") : new MemoryStream(files[name])
                    ),
                    Run.Unwatched
                )
                .Problems
        );

        Assert.Equal(Path.Combine("tables", WriteOutRecord.FileOf("graded")), problem.File);
        Assert.Equal(0, Rows(record, "class"));
    }

    /// <summary>Whoever brings it home again finds it at home: nothing there says any more that it is elsewhere.</summary>
    [Fact]
    public void A_record_that_is_brought_home_is_found_at_home()
    {
        using (Filled("one")) { }
        MoveRecord.Run(new(_folder.Of("one"), _folder.Of("safe"), Kim.Now), Run.Unwatched);
        var home = MoveRecord.Run(new(_folder.Of("one"), _folder.Of("one"), Kim.Now), Run.Unwatched).Model!;

        Assert.Equal(_folder.Of("one", TeachingRecord.FileName), home.Path);
        using var record = Open("one");
        Assert.Equal(home.Path, record.Path);
        Assert.True(Rows(record, "graded") > 0);
    }

    /// <summary>A record that holds grades, a term with marks of the bench and of the table, and rows in the other tables.</summary>
    private TeachingRecord Filled(string folder)
    {
        var record = Open(folder);
        for (var seed = 0; seed < 5; seed++)
        {
            var any = AnyGrades.Of(Small, seed);
            Assert.Empty(
                EnterGrades
                    .Run(new(record, Kim, null, any with { Dealt = any.Dealt with { Identity = Small.Identity } }), Run.Unwatched)
                    .Problems
            );
        }
        var term = EnterTerm
            .Read(Path.Combine(DemoMaterial.Find(AppContext.BaseDirectory)!.Root, "demo-cohort", "term", "term.md"), (plan, deals) =>
                new(record, Kim, null, plan, deals)
            )
            .Model!;
        Assert.Empty(EnterTerm.Run(term, Run.Unwatched).Problems);
        record.Write(new(Kim.Now, "Kim", "test", "", ""), session =>
        {
            foreach (var sql in Others)
                session.Run(sql, session.ChangeId);
            return true;
        });
        return record;
    }

    private static readonly string[] Others =
    [
        "UPDATE student SET name = name || ' ' WHERE id = 'ben-okoye' AND $1 > 0",
        "UPDATE student SET name = rtrim(name) WHERE id = 'ben-okoye' AND $1 > 0",
        "INSERT INTO lesson_given (class, lesson, title, day) SELECT 1, 'tin', '=1+1', '2026-09-01' WHERE $1 > 0",
        "INSERT INTO observation (lesson_given, team, bread, measured, unit, value, remark, change) VALUES (1, '', '@bread', '-height', 'cm', '7.5', NULL, $1)",
        "INSERT INTO arrangement (class, student, since, what, change) VALUES (1, 'ada-berg', '2026-09-01', 'large print', $1)",
        "INSERT INTO frozen_grade (term, number, student, grade, percent, rounded, provisional, change) VALUES (1, 1, 'ada-berg', NULL, NULL, NULL, 1, $1), (1, 1, 'ben-okoye', 'good', '81.5', '82', 0, $1)",
        "INSERT INTO frozen_work (frozen, place, title, standing, share) SELECT 2, 0, 'Loaf', 'Counts', '0.5' WHERE $1 > 0",
    ];

    private TeachingRecord Open(string folder)
    {
        Directory.CreateDirectory(_folder.Of(folder));
        return RecordPlace.Open(_folder.Of(folder), Kim.Now, mayBegin: true).Model!;
    }

    private static Dictionary<string, byte[]> WriteOut(TeachingRecord record)
    {
        using var look = record.Look();
        return WriteOutRecord
            .Write(WriteOutRecord.Run(new(look), Run.Unwatched))
            .Files.ToDictionary(file => file.Path, file => file.Content);
    }

    /// <summary>Every table with its long texts unpacked.</summary>
    private static string Everything(TeachingRecord record) => string.Join('\n', WriteOut(record).Values.Select(Encoding.UTF8.GetString));

    private static long Rows(TeachingRecord record, string table) =>
        record.Read(session => session.Number($"SELECT count(*) FROM {table}"))!.Value;

    private static List<string> Names(SqliteConnection database)
    {
        using var command = database.CreateCommand();
        command.CommandText = "SELECT name FROM sqlite_schema WHERE type = 'table'";
        using var reader = command.ExecuteReader();
        List<string> names = [];
        while (reader.Read())
            names.Add(reader.GetString(0));
        return names;
    }

    private static long Ask(SqliteConnection database, string sql)
    {
        using var command = database.CreateCommand();
        command.CommandText = sql;
        return command.ExecuteScalar() as long? ?? 0;
    }
}
