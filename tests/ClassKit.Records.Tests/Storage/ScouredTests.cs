using System.Text;
using ClassKit.Records.Classes;
using ClassKit.Records.Storage;
using ClassKit.Records.Tests.Samples;

namespace ClassKit.Records.Tests.Storage;

/// <summary>What was deleted is not in the file any more, or it is said that it still is.</summary>
/// <remarks>
/// SQLite, PRAGMA wal_checkpoint: a checkpoint that readers or writers hold back is no error, its row says so; until it is through, the old
/// pages stay in the file of the database.
/// </remarks>
public sealed class ScouredTests : IDisposable
{
    private readonly RecordFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void What_a_reader_still_needs_stays_in_the_file_and_that_is_said()
    {
        using (var record = _folder.Open())
            Sample.Enrol(record, "Bakers 1", Sample.Ada);
        using var reader = _folder.Open();
        using var eraser = _folder.Open();
        using (var look = reader.Look())
        {
            Assert.Single(ClassRegister.All(look));
            Forget(eraser);

            Assert.Equal(Scoured.WhenClosed, eraser.Scour());
            Assert.True(IsInFile());
        }

        Assert.Equal(Scoured.Gone, eraser.Scour());
        Assert.False(IsInFile());
    }

    [Fact]
    public void Nothing_stays_once_a_reader_who_held_it_back_has_gone()
    {
        using (var record = _folder.Open())
            Sample.Enrol(record, "Bakers 1", Sample.Ada);
        using (var reader = _folder.Open())
        using (var eraser = _folder.Open())
        using (var look = reader.Look())
        {
            Assert.Single(ClassRegister.All(look));
            Forget(eraser);
            Assert.Equal(Scoured.WhenClosed, eraser.Scour());
        }

        Assert.False(IsInFile());
    }

    [Fact]
    public void Beside_somebody_who_writes_it_is_not_done_and_that_is_said()
    {
        using var writer = _folder.Open();
        using var eraser = _folder.Open();
        Sample.Enrol(writer, "Bakers 1", Sample.Ada);
        Forget(eraser);

        writer.Write(Sample.Change(), session =>
        {
            Assert.Equal(Scoured.OthersWrite, eraser.Scour());
            session.Abandon();
            return true;
        });

        Assert.Equal(Scoured.Gone, eraser.Scour());
    }

    private static void Forget(TeachingRecord record) =>
        record.Write(Sample.Change(""), session => session.Run("DELETE FROM student WHERE id = $1", Sample.Ada.Id));

    private bool IsInFile()
    {
        using var file = new FileStream(_folder.File, FileMode.Open, FileAccess.Read, FileShare.ReadWrite | FileShare.Delete);
        using var bytes = new MemoryStream();
        file.CopyTo(bytes);
        return bytes.ToArray().AsSpan().IndexOf(Encoding.UTF8.GetBytes(Sample.Ada.Name)) >= 0;
    }
}
