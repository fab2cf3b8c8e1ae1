namespace ClassKit.Records.Storage;

/// <summary>A record could not be opened, read or written; what was committed before is as it was.</summary>
/// <param name="path">The file.</param>
/// <param name="trouble">Why.</param>
/// <param name="cause">What the database or the system said; null where we found it ourselves.</param>
#pragma warning disable CA1032 // An exception without a trouble says nothing.
public sealed class RecordException(string path, RecordTrouble trouble, Exception? cause = null) : Exception($"{path}: {trouble}", cause)
#pragma warning restore CA1032
{
    /// <summary>The file.</summary>
    public string Path => path;

    /// <summary>Why.</summary>
    public RecordTrouble Trouble => trouble;
}
