using ClassKit.Records.Changes;
using ClassKit.Records.Classes;
using ClassKit.Records.Marks;
using ClassKit.Records.Storage;
using ClassKit.Records.Terms;
using ClassKit.Records.Tests.Samples;
using ClassKit.Terms.Bench;
using Microsoft.Data.Sqlite;

namespace ClassKit.Records.Tests.Storage;

/// <summary>A record of any version before is copied and then brought to this one, with all that is in it.</summary>
public sealed class MigrationTests : IDisposable
{
    /// <summary>What every version could hold: a class of two, a work at the bench that was marked, and a mark that was changed.</summary>
    private const string Rows = """
        INSERT INTO change (id, at, who, what, about, why) VALUES (1, '2026-11-29T12:00:00.0000000+01:00', 'Kim', 'enter', 'Bakers 1', '');
        INSERT INTO class (id, name) VALUES (1, 'Bakers 1');
        INSERT INTO student (id, name) VALUES ('ada-berg', 'Ada Berg'), ('ben-okoye', 'Ben Okoye');
        INSERT INTO enrolment (class, student, since) VALUES (1, 'ada-berg', '2026-09-01'), (1, 'ben-okoye', '2026-09-01');
        INSERT INTO term (id, class, title) VALUES (1, 1, 'Autumn');
        INSERT INTO work (id, term, place, title, kind, category, out_of) VALUES (1, 1, 0, 'Loaf', 'BenchWork', 'Bench', '12');
        INSERT INTO bench_criterion (work, place, name, weight) VALUES (1, 0, 'Shaping', '2'), (1, 1, 'Baking', '1.5');
        INSERT INTO bench_level (work, place, name, points) VALUES (1, 0, 'not yet', '0'), (1, 1, 'nearly', '1.25'), (1, 2, 'fully', '4');
        INSERT INTO bench_sheet (id, work, sitting, place, marker, change) VALUES (1, 1, 1, 1, 'Kim', 1);
        INSERT INTO work (id, term, place, title, kind, category, out_of) VALUES (2, 1, 1, 'Sums', 'CalculationSet', 'Calculations', '1');
        """;

    /// <summary>Levels as they stood until version 7, and one that was changed.</summary>
    private const string LevelsByPlace = """
        INSERT INTO bench_mark (id, sheet, student, levels, comment, change) VALUES (1, 1, 'ada-berg', '2 1', 'apron', 1), (2, 1, 'ben-okoye', '0 -1', NULL, 1);
        UPDATE bench_mark SET levels = '2 2' WHERE id = 1;
        """;

    private const string LevelsByRow = """
        INSERT INTO bench_mark (id, sheet, student, comment, change) VALUES (1, 1, 'ada-berg', 'apron', 1), (2, 1, 'ben-okoye', NULL, 1);
        INSERT INTO bench_mark_level (mark, criterion, work, level) VALUES (1, 0, 1, 2), (1, 1, 1, 2), (2, 0, 1, 0), (2, 1, 1, NULL);
        """;

    private const int FirstWithRows = 8;

    private readonly RecordFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    public static TheoryData<int> Earlier() => [.. Enumerable.Range(1, Migrations.Latest - 1)];

    [Theory]
    [MemberData(nameof(Earlier))]
    public void A_record_of_an_earlier_version_is_copied_and_then_brought_to_this_one(int version)
    {
        Begin(version, Rows + (version < FirstWithRows ? LevelsByPlace : LevelsByRow));

        using (var record = _folder.Open(mayBegin: false))
        {
            record.Verify();
            var named = Assert.Single(record.Read(ClassRegister.All));
            var works = record.Read(session => TermRegister.Works(session, TermRegister.Find(session, named, "Autumn")!));
            // Nothing of the sums was graded: the one point stood for nobody knows how many.
            Assert.Equal([12, null], works.Select(work => work.Assignment.OutOf));
            var marking = Assert.Single(record.Read(session => BenchRegister.Of(session, works[0]))).Marking;
            Assert.Equal([2, 2], marking.First.Places[Sample.Ada.Id]);
            Assert.Equal([0, BenchScale.NotAsked], marking.First.Places[Sample.Ben.Id]);
            Assert.Equal([KeyValuePair.Create(Sample.Ada.Id, "apron")], marking.First.Comments);
            // What was logged before stays as it was logged.
            Assert.Equal(
                version < FirstWithRows ? [new ChangedRow("bench_mark", Sample.Ada.Id, "1 2 1 apron", "1 2 2 apron")] : [],
                Assert.Single(record.Read(ChangeLog.Read)).Rows
            );
            Assert.Equal(Tables(TeachingRecord.InMemory()), Tables(record));
        }

        using var copy = new SqliteConnection($"Data Source={Assert.Single(Backups.Of(_folder.File))};Pooling=False");
        copy.Open();
        using var asked = copy.CreateCommand();
        asked.CommandText = "PRAGMA user_version";
        Assert.Equal((long)version, asked.ExecuteScalar());
        Assert.Null(RecordHeader.Trouble(_folder.File));
    }

    /// <summary>
    /// What a connection must take in before it can read is half of what opening takes; the log is kept by what whoever writes brings
    /// along.
    /// </summary>
    [Fact]
    public void No_trigger_stands_in_the_file() =>
        Assert.DoesNotContain(Tables(TeachingRecord.InMemory()), table => table.Kind == "trigger");

    private void Begin(int version, string rows)
    {
        using var database = new SqliteConnection($"Data Source={_folder.File};Pooling=False");
        database.Open();
        foreach (var (_, sql) in Migrations.After(0).Take(version))
            Opening.Run(database, sql);
        Opening.Run(database, $"PRAGMA user_version = {version}; PRAGMA application_id = {RecordHeader.ApplicationId}; {rows}");
    }

    private static List<(string Kind, string Name, string? Sql)> Tables(TeachingRecord record) =>
        record.Read(session =>
            session.Query("SELECT type, name, sql FROM sqlite_schema ORDER BY type, name", row =>
                (row.Text(0), row.Text(1), row.TextOrNull(2))
            )
        );
}
