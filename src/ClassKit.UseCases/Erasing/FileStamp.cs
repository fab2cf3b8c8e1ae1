namespace ClassKit.UseCases.Erasing;

/// <summary>By what it is told that a file was changed.</summary>
/// <param name="Length">In bytes; -1 where there is no file.</param>
/// <param name="Written">When it was written last, in UTC.</param>
internal readonly record struct FileStamp(long Length, DateTime Written)
{
    /// <summary>As it is now.</summary>
    public static FileStamp Of(string file) =>
        new FileInfo(file) is { Exists: true } there ? new(there.Length, there.LastWriteTimeUtc) : new(-1, default);
}
