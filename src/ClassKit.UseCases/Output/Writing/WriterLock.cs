namespace ClassKit.UseCases.Output.Writing;

/// <summary>The right to write into a folder. The system takes it back when the process ends, however it ends.</summary>
/// <remarks>
/// The file stays when the lock is given back: one that is deleted can be locked by two, who each opened another file of its name. Where a
/// file system has no locks, nothing is refused.
/// </remarks>
public sealed class WriterLock : IDisposable
{
    /// <summary>The file that is locked by who writes.</summary>
    public const string FileName = ".classkit-lock";

    /// <summary>ERROR_SHARING_VIOLATION, ERROR_LOCK_VIOLATION, and EWOULDBLOCK on Linux and on macOS.</summary>
    private static readonly int[] Busy = [unchecked((int)0x80070020), unchecked((int)0x80070021), 11, 35];

    private readonly FileStream _file;

    private WriterLock(FileStream file) => _file = file;

    /// <summary>Takes the lock of a folder; null if somebody has it.</summary>
    /// <param name="root">The folder, which is there.</param>
    /// <param name="name">The file that is locked: one for each right that is to be had.</param>
    /// <exception cref="IOException">Something else stands in the file's place, or it cannot be made.</exception>
    /// <exception cref="UnauthorizedAccessException">It may not be made.</exception>
    public static WriterLock? TryTake(string root, string name = FileName)
    {
        var path = Path.Combine(root, name);
        if (Place.At(path) is Standing.Folder or Standing.Link)
            throw new IOException($"{path} is not the file that ClassKit keeps there");
        try
        {
            while (true)
            {
                var file = new FileStream(path, FileMode.OpenOrCreate, FileAccess.ReadWrite, FileShare.None, bufferSize: 0);
                if (File.Exists(path))
                    return new(file);

                // Whoever had it has just given up the folder.
                file.Dispose();
            }
        }
        catch (IOException failure) when (Busy.Contains(failure.HResult))
        {
            return null;
        }
    }

    /// <inheritdoc/>
    public void Dispose() => _file.Dispose();
}
