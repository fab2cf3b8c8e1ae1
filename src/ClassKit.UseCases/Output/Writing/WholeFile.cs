namespace ClassKit.UseCases.Output.Writing;

/// <summary>
/// Writes a file whole or not at all: on a full disk, or where a folder goes away meanwhile, what was there before stays as it was and
/// nothing is left beside it.
/// </summary>
public static class WholeFile
{
    /// <summary>A double click writes one file twice at once: the second would cut off what the first is about to put in place.</summary>
    private static readonly Lock Writing = new();

    /// <summary>Writes it.</summary>
    /// <param name="path">Where.</param>
    /// <param name="content">What is to be in it.</param>
    /// <exception cref="IOException">It cannot be written.</exception>
    /// <exception cref="UnauthorizedAccessException">It must not be written.</exception>
    public static void Write(string path, ReadOnlySpan<byte> content)
    {
        lock (Writing)
            WriteAlone(path, content);
    }

    private static void WriteAlone(string path, ReadOnlySpan<byte> content)
    {
        var beside = Path.Combine(Path.GetDirectoryName(path)!, $".{Path.GetFileName(path)}.new");
        try
        {
            // On the disk before it takes the old one's place: after a power cut a name may else stand for nothing but zeros.
            using (var file = File.Create(beside))
            {
                file.Write(content);
                file.Flush(flushToDisk: true);
            }
            if (!OperatingSystem.IsWindows() && File.Exists(path))
                File.SetUnixFileMode(beside, File.GetUnixFileMode(path));
            File.Move(beside, path, overwrite: true);
        }
        catch
        {
            TakeAway(beside);
            throw;
        }
    }

    private static void TakeAway(string beside)
    {
        try
        {
            File.Delete(beside);
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            // Its folder is not there any more; what it stood for was not written, and that is said.
        }
    }
}
