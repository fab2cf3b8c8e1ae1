using System.Buffers.Binary;
using ClassKit.Records.Classes;
using ClassKit.Records.Storage;
using ClassKit.Records.Tests.Samples;
using Microsoft.Data.Sqlite;

namespace ClassKit.Records.Tests.Storage;

/// <summary>What can be opened and what cannot. Places in the file: SQLite, Database File Format, 1.3.</summary>
public sealed class OpeningTests : IDisposable
{
    private const int VersionAt = 60;
    private const int ApplicationAt = 68;

    private readonly RecordFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void What_was_written_is_there_when_it_is_opened_again_and_nothing_lies_beside_it()
    {
        using (var record = _folder.Open())
            Sample.Enrol(record, "Bakers 1", Sample.Ada);

        Assert.Equal([TeachingRecord.FileName], Directory.GetFileSystemEntries(_folder.Path).Select(Path.GetFileName));
        using var again = _folder.Open(mayBegin: false);
        Assert.Equal(["Bakers 1"], again.Read(ClassRegister.All).Select(one => one.Name));
    }

    [Fact]
    public void None_begins_where_it_was_not_asked_to() => Assert.IsType<RecordTrouble.Missing>(_folder.Trouble());

    [Fact]
    public void A_newer_one_is_refused_and_stays_as_it_is()
    {
        Written();
        Patch(VersionAt, 99);
        var before = File.ReadAllBytes(_folder.File);

        Assert.Equal(99, Assert.IsType<RecordTrouble.Newer>(_folder.Trouble()).Version);
        Assert.Equal(before, File.ReadAllBytes(_folder.File));
    }

    [Fact]
    public void One_whose_beginning_was_cut_off_begins_again()
    {
        // A record before its first migration: begun, and empty.
        using (var database = new SqliteConnection($"Data Source={_folder.File};Pooling=False"))
        {
            database.Open();
            using var command = database.CreateCommand();
            command.CommandText = $"PRAGMA application_id = {0x436B5264}";
            command.ExecuteNonQuery();
        }
        using var record = _folder.Open(mayBegin: false);

        Sample.Enrol(record, "Bakers 1", Sample.Ada);
        Assert.Single(record.Read(ClassRegister.All));
    }

    [Theory]
    [InlineData("")]
    [InlineData("PRAGMA application_id = 7;")]
    public void A_database_of_something_else_is_refused_and_gets_no_tables(string marked)
    {
        using (var database = new SqliteConnection($"Data Source={_folder.File};Pooling=False"))
        {
            database.Open();
            using var command = database.CreateCommand();
            command.CommandText = marked + "CREATE TABLE recipe (name TEXT)";
            command.ExecuteNonQuery();
        }
        var before = File.ReadAllBytes(_folder.File);

        Assert.IsType<RecordTrouble.Foreign>(_folder.Trouble());
        Assert.Equal(before, File.ReadAllBytes(_folder.File));
    }

    [Theory]
    [InlineData("id,name\nada,Ada\n")]
    [InlineData("SQLite format 2")]
    public void Any_other_file_is_refused(string text)
    {
        File.WriteAllText(_folder.File, text);

        Assert.IsType<RecordTrouble.Foreign>(_folder.Trouble());
    }

    [Fact]
    public void A_truncated_one_is_refused_wherever_it_breaks_off()
    {
        Written();
        var whole = File.ReadAllBytes(_folder.File);
        foreach (var length in new[] { 20, 99, 100, 4096, whole.Length / 2, whole.Length - 1 })
        {
            File.WriteAllBytes(_folder.File, whole[..length]);
            Assert.Equal(length, Assert.IsType<RecordTrouble.Truncated>(_folder.Trouble()).Bytes);
        }
    }

    [Fact]
    public void A_scribbled_one_is_refused_or_gives_what_was_written()
    {
        Written();
        var whole = File.ReadAllBytes(_folder.File);
        var random = new Random(18);
        var refused = 0;
        for (var trial = 0; trial < 200; trial++)
        {
            var scribbled = whole.ToArray();
            random.NextBytes(scribbled.AsSpan(random.Next(100, whole.Length - 64), 64));
            File.WriteAllBytes(_folder.File, scribbled);
            try
            {
                using var record = _folder.Open(mayBegin: false);
                record.Read(ClassRegister.All);
            }
            catch (RecordException failure)
            {
                Assert.IsType<RecordTrouble.Damaged>(failure.Trouble);
                refused++;
            }
        }
        Assert.InRange(refused, 20, 200);
    }

    [Fact]
    public void A_folder_that_is_not_there_is_said_to_be_out_of_reach() =>
        Assert.IsType<RecordTrouble.Unreachable>(
            Assert
                .Throws<RecordException>(() =>
                    TeachingRecord.Open(Path.Combine(_folder.Path, "gone", "record.sqlite"), Sample.Noon, mayBegin: true)
                )
                .Trouble
        );

    private void Written()
    {
        using var record = _folder.Open();
        Sample.Enrol(
            record,
            "Bakers 1",
            [Sample.Ada, Sample.Ben, .. Enumerable.Range(0, 500).Select(number => Sample.Ada with { Id = $"student-{number}" })]
        );
    }

    private void Patch(int at, int value)
    {
        var bytes = File.ReadAllBytes(_folder.File);
        BinaryPrimitives.WriteInt32BigEndian(bytes.AsSpan(at), value);
        File.WriteAllBytes(_folder.File, bytes);
    }
}
