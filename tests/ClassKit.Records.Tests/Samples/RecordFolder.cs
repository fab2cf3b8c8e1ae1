using ClassKit.Records.Storage;

namespace ClassKit.Records.Tests.Samples;

/// <summary>A folder for one test with a record in it.</summary>
internal sealed class RecordFolder : IDisposable
{
    public RecordFolder() => Path = Directory.CreateTempSubdirectory("classkit-record-").FullName;

    public string Path { get; }

    public string File => System.IO.Path.Combine(Path, TeachingRecord.FileName);

    public TeachingRecord Open(bool mayBegin = true) => TeachingRecord.Open(File, Sample.Noon, mayBegin);

    /// <summary>Why the record cannot be opened.</summary>
    public RecordTrouble Trouble() => Assert.Throws<RecordException>(() => Open(mayBegin: false).Dispose()).Trouble;

    public void Dispose() => Directory.Delete(Path, recursive: true);
}
