using ClassKit.Records.Changes;
using ClassKit.Records.Classes;
using ClassKit.Records.Storage;
using ClassKit.Records.Tests.Samples;
using Microsoft.Data.Sqlite;

namespace ClassKit.Records.Tests.Storage;

/// <summary>Several at one record, no room on the disk, a file that may not be written.</summary>
public sealed class SharedTests : IDisposable
{
    private readonly RecordFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void Who_waits_too_long_is_told_who_is_writing_and_readers_read_on()
    {
        using var one = _folder.Open();
        using var two = _folder.Open();
        Sample.Enrol(one, "Bakers 1", Sample.Ada);

        one.Write(Sample.Change("Cooks 2") with { Who = "Lou", What = "enter" }, session =>
        {
            var busy = Assert.IsType<RecordTrouble.Busy>(Assert.Throws<RecordException>(() => Sample.Enrol(two, "Bakers 3")).Trouble);
            Assert.Equal("Lou: enter Cooks 2", busy.Writer);
            Assert.Single(two.Read(ClassRegister.All));
            return ClassRegister.Put(session, "Cooks 2");
        });

        Sample.Enrol(two, "Bakers 3");
        Assert.Equal(["Bakers 1", "Bakers 3", "Cooks 2"], one.Read(ClassRegister.All).Select(found => found.Name));
    }

    /// <summary>It is taken elsewhere while nobody writes, and whoever had it open writes no more where nobody will look.</summary>
    [Fact]
    public void A_record_is_moved_when_nobody_writes_and_is_not_written_to_where_it_was()
    {
        using var one = _folder.Open();
        using var two = _folder.Open();
        Sample.Enrol(one, "Bakers 1", Sample.Ada);
        var elsewhere = _folder.File + "-elsewhere";
        one.Write(Sample.Change("Cooks 2"), session =>
        {
            Assert.IsType<RecordTrouble.Busy>(
                Assert.Throws<RecordException>(() => two.MoveTo(elsewhere, () => Assert.Fail("Somebody is writing."))).Trouble
            );
            return ClassRegister.Put(session, "Cooks 2");
        });
        Assert.False(File.Exists(elsewhere));

        two.MoveTo(elsewhere, () => { });

        Assert.IsType<RecordTrouble.Missing>(Assert.Throws<RecordException>(() => Sample.Enrol(one, "Bakers 3")).Trouble);
        using var moved = TeachingRecord.Open(elsewhere, DateTimeOffset.UnixEpoch, mayBegin: false);
        Assert.Equal(["Bakers 1", "Cooks 2"], moved.Read(ClassRegister.All).Select(found => found.Name));
        Assert.False(File.Exists(_folder.File));
    }

    /// <summary>A file of the caller's that cannot be read says nothing about the record.</summary>
    [Fact]
    public void What_a_callers_own_work_throws_is_not_told_as_the_records()
    {
        using var record = _folder.Open();
        Sample.Enrol(record, "Bakers 1", Sample.Ada);
        var locked = new IOException("graded.csv is locked");

        Assert.Same(locked, Assert.Throws<IOException>(() => record.Read<bool>(_ => throw locked)));
        Assert.Same(locked, Assert.Throws<IOException>(() => record.Write<bool>(Sample.Change(), _ => throw locked)));
        Assert.Same(locked, Assert.Throws<IOException>(() => record.Fill<string>(_ => throw locked)));
        Assert.Same(locked, Assert.Throws<IOException>(() => record.MoveTo(_folder.File + "-elsewhere", () => throw locked)));

        Assert.Equal(["Bakers 1"], record.Read(ClassRegister.All).Select(found => found.Name));
    }

    /// <summary>The stamp saves time and nothing else: what is committed is on record without it.</summary>
    [Fact]
    public void A_stamp_that_cannot_be_written_is_no_failure_of_what_was_written()
    {
        Directory.CreateDirectory(_folder.File + "-whole");

        using (var record = _folder.Open())
            Sample.Enrol(record, "Bakers 1", Sample.Ada);

        using var again = _folder.Open(mayBegin: false);
        Assert.Single(again.Read(ClassRegister.All));
    }

    [Fact]
    public async Task Two_who_begin_the_same_record_at_once_both_succeed()
    {
        for (var trial = 0; trial < 20; trial++)
        {
            using var folder = new RecordFolder();
            await Task.WhenAll(
                new[] { "Bakers 1", "Cooks 2" }.Select(name =>
                    Task.Run(() =>
                    {
                        using var record = folder.Open();
                        Sample.Enrol(record, name, Sample.Ada);
                    })
                )
            );

            using var record = folder.Open(mayBegin: false);
            Assert.Equal(["Bakers 1", "Cooks 2"], record.Read(ClassRegister.All).Select(found => found.Name));
            Assert.Equal(2, record.Read(ChangeLog.Read).Count);
        }
    }

    [Fact]
    public void Where_there_is_no_room_nothing_of_the_change_is_there_and_all_before_it_is()
    {
        using var record = _folder.Open();
        Sample.Enrol(record, "Bakers 1", Sample.Ada);
        record.Write(Sample.Change(), session =>
        {
            // SQLite says a full disk in just this way (SQLITE_FULL) where its pages are limited.
            using var limit = session.Connection.CreateCommand();
            limit.Transaction = session.Transaction;
            limit.CommandText = "PRAGMA max_page_count = 1";
            limit.ExecuteNonQuery();
            session.Abandon();
            return true;
        });

        var failure = Assert.Throws<RecordException>(() =>
            Sample.Enrol(record, "Cooks 2", [.. Enumerable.Range(0, 5000).Select(number => Sample.Ada with { Id = $"student-{number}" })])
        );

        Assert.IsType<RecordTrouble.Full>(failure.Trouble);
        record.Verify();
        Assert.Equal(["Bakers 1"], record.Read(ClassRegister.All).Select(found => found.Name));
    }

    [Fact]
    public void A_locked_file_is_said_to_be_written_in_by_somebody()
    {
        using (var record = _folder.Open())
            Sample.Enrol(record, "Bakers 1", Sample.Ada);
        using var other = new SqliteConnection($"Data Source={_folder.File};Pooling=False");
        other.Open();
        using var command = other.CreateCommand();
        command.CommandText = "PRAGMA locking_mode = EXCLUSIVE; BEGIN EXCLUSIVE; UPDATE class SET name = 'Cooks'";
        command.ExecuteNonQuery();

        Assert.Null(Assert.IsType<RecordTrouble.Busy>(_folder.Trouble()).Writer);
    }

    /// <summary>Whoever puts the newest copy back must not get an older one.</summary>
    [Fact]
    public void Copies_stand_in_the_order_in_which_they_were_made_and_those_of_other_records_are_not_among_them()
    {
        using var record = _folder.Open();
        using var other = TeachingRecord.Open(Path.Combine(_folder.Path, "record-2026.sqlite"), Sample.Noon, mayBegin: true);
        other.BackUp(Sample.Noon);
        string[] copies =
        [
            .. Enumerable.Range(0, 11).Select(_ => record.BackUp(Sample.Noon)),
            record.BackUp(Sample.Noon.AddSeconds(1)),
            record.BackUp(Sample.Noon.AddHours(10)),
        ];

        Assert.Equal(copies, Backups.Of(_folder.File));
    }

    [Fact]
    public void Copies_are_whole_while_somebody_writes_and_each_has_a_name_of_its_own()
    {
        using var one = _folder.Open();
        using var two = _folder.Open();
        Sample.Enrol(one, "Bakers 1", Sample.Ada);
        string[] copies = one.Write(Sample.Change(), session =>
        {
            ClassRegister.Put(session, "Cooks 2");
            return new[] { two.BackUp(Sample.Noon), two.BackUp(Sample.Noon) };
        });

        Assert.Equal(copies, Backups.Of(_folder.File));
        Assert.All(copies, copy =>
        {
            using var record = TeachingRecord.Open(copy, Sample.Noon, mayBegin: false);
            Assert.Equal(["Bakers 1"], record.Read(ClassRegister.All).Select(found => found.Name));
        });
    }
}
