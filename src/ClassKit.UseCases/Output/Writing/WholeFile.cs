namespace ClassKit.UseCases.Output.Writing;

/// <summary>
/// Writes a file whole or not at all: on a full disk, or where a folder goes away meanwhile, what was there before stays as it was and
/// nothing is left beside it.
/// </summary>
public static class WholeFile
{
    /// <summary>Writes it.</summary>
    /// <param name="path">Where.</param>
    /// <param name="content">What is to be in it.</param>
    /// <exception cref="IOException">It cannot be written.</exception>
    /// <exception cref="UnauthorizedAccessException">It must not be written.</exception>
    public static void Write(string path, ReadOnlySpan<byte> content)
    {
        var beside = Path.Combine(Path.GetDirectoryName(path)!, $".{Path.GetFileName(path)}.new");
        try
        {
            File.WriteAllBytes(beside, content);
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
