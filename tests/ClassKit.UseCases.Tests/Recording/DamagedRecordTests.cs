using ClassKit.Records.Storage;
using ClassKit.UseCases.Recording;

namespace ClassKit.UseCases.Tests.Recording;

/// <summary>A record that cannot be opened says what to do: which copy to put in its place, or that there is none.</summary>
public sealed class DamagedRecordTests : IDisposable
{
    private static readonly DateTimeOffset Now = new(2026, 11, 30, 12, 0, 0, TimeSpan.Zero);

    private readonly string _folder = Directory.CreateTempSubdirectory("classkit-damaged-").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Theory]
    [InlineData("cut off", true)]
    [InlineData("cut off", false)]
    [InlineData("scribbled over", true)]
    [InlineData("scribbled over", false)]
    [InlineData("its beginning gone", true)]
    [InlineData("its beginning gone", false)]
    public void What_to_do_names_the_newest_copy_or_says_that_there_is_none(string how, bool hasCopies)
    {
        var file = Path.Combine(_folder, TeachingRecord.FileName);
        using (var record = TeachingRecord.Open(file, Now, mayBegin: true))
        {
            if (hasCopies)
            {
                record.BackUp(Now.AddDays(-1));
                record.BackUp(Now);
            }
        }
        var bytes = File.ReadAllBytes(file);
        if (how == "cut off")
            bytes = bytes[..(bytes.Length / 2)];
        else
            Array.Fill(bytes, (byte)0x55, how == "scribbled over" ? 4096 : 0, how == "scribbled over" ? bytes.Length - 4096 : 50);
        File.WriteAllBytes(file, bytes);

        var problem = Assert.Single(RecordPlace.Open(_folder, Now, mayBegin: true).Problems).ToString();

        Assert.Contains(
            hasCopies ? "`record-backups/record-2026-11-30T120000.sqlite`" : "No copy was made beside it",
            problem,
            StringComparison.Ordinal
        );
        Assert.Equal(bytes, File.ReadAllBytes(file));
    }

    /// <summary>Nothing begins where the name of a folder was typed wrong.</summary>
    [Fact]
    public void A_folder_that_is_not_there_is_no_name_of_a_new_record()
    {
        var opened = RecordPlace.Open(Path.Combine(_folder, "teachign"), Now, mayBegin: true);

        Assert.Contains("Look whether the folder is there", Assert.Single(opened.Problems).ToString(), StringComparison.Ordinal);
        Assert.Empty(Directory.EnumerateFileSystemEntries(_folder));
    }
}
