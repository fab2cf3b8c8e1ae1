namespace ClassKit.UseCases.Erasing;

/// <summary>Files on the disk, by their full paths.</summary>
internal sealed class FilesOfFolder : ILookedThrough
{
    /// <summary>Larger files are not looked into, in bytes.</summary>
    private const int MostBytes = 64 << 20;

    public byte[]? Bytes(string file)
    {
        try
        {
            return new FileInfo(file).Length > MostBytes ? null : File.ReadAllBytes(file);
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            // Said of the file wherever it matters: it was not looked into.
            return null;
        }
    }

    public IEnumerable<string> In(string folder) => Directory.EnumerateFiles(folder);
}
