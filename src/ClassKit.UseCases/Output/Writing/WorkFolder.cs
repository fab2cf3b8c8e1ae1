using System.Globalization;
using System.Security.Cryptography;

namespace ClassKit.UseCases.Output.Writing;

/// <summary>
/// The hidden folder within an output folder in which new files wait until all are whole. It is on the same disk, so that renaming puts
/// them in place.
/// </summary>
internal sealed class WorkFolder(string root)
{
    public const string FolderName = ".classkit-work";

    private const string Unfinished = "journal-unfinished";

    private int _names;

    private string Folder { get; } = Path.Combine(root, FolderName);

    private string JournalFile => Path.Combine(Folder, "journal");

    private string WriterFile => Path.Combine(Folder, "writer");

    public string Root => root;

    /// <summary>True if a run is putting its files in place, or was cut off while it did.</summary>
    public bool HasJournal => Place.At(Folder) == Standing.Folder && Place.At(JournalFile) == Standing.File;

    /// <summary>True if a run left something behind.</summary>
    public bool IsThere => Place.At(Folder) != Standing.Nothing;

    /// <summary>True where the file system takes two names that differ only in case for one.</summary>
    public bool IgnoresCase => Path.Exists(Path.Combine(root, FolderName.ToUpperInvariant()));

    /// <summary>Begins, and leaves word who is at work.</summary>
    public void Begin(string kind)
    {
        Directory.CreateDirectory(Folder);
        File.WriteAllText(WriterFile, string.Create(CultureInfo.InvariantCulture, $"`{kind}` (process {Environment.ProcessId})"));
    }

    /// <summary>Who is at work, and since when.</summary>
    public string Writer()
    {
        try
        {
            const int mostLength = 200;
            if (Place.At(WriterFile) != Standing.File)
                return "Another run of ClassKit";
            var words = File.ReadAllText(WriterFile);
            return string.Create(
                CultureInfo.InvariantCulture,
                $"{words[..Math.Min(words.Length, mostLength)]}, begun at {File.GetLastWriteTime(WriterFile):HH:mm:ss},"
            );
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            return "Another run of ClassKit";
        }
    }

    /// <summary>Where a staged file lies.</summary>
    public string Staged(string name) => Path.Combine(Folder, name);

    /// <summary>A name that nothing in here has yet; can be asked for from several threads.</summary>
    public string NextName()
    {
        while (true)
        {
            var name = (Interlocked.Increment(ref _names) - 1).ToString(CultureInfo.InvariantCulture);
            if (Place.At(Staged(name)) == Standing.Nothing)
                return name;
        }
    }

    /// <summary>Writes a file here.</summary>
    /// <returns>Its name here and its digest.</returns>
    public (string Name, string Digest) Stage(Action<Stream> write)
    {
        var name = NextName();
        using var file = File.Create(Staged(name));
        using var sha = SHA256.Create();
        using (var hashed = new CryptoStream(file, sha, CryptoStreamMode.Write, leaveOpen: true))
            write(hashed);
        Durable.FlushOne(file);
        return (name, Digest.Text(sha.Hash!));
    }

    public Journal ReadJournal() => Journal.Read(JournalFile);

    /// <summary>From here on all of it will happen.</summary>
    public void Commit(Journal journal)
    {
        using (var file = File.Create(Staged(Unfinished)))
        {
            journal.Write(file);
            Durable.FlushOne(file);
        }
        Durable.FlushAll(Staged(Unfinished));
        File.Move(Staged(Unfinished), JournalFile);
    }

    /// <summary>Nothing of it has happened.</summary>
    public void Withdraw() => File.Delete(JournalFile);

    /// <summary>All of it has happened.</summary>
    public void Finish(Journal journal)
    {
        foreach (var folder in journal.Emptied)
            RemoveIfEmpty(OwnPath.In(root, folder));
        File.Delete(JournalFile);
        Clear();
    }

    /// <summary>Removes what is left.</summary>
    public void Clear() =>
        Try(() =>
        {
            if (IsThere)
                Directory.Delete(Folder, recursive: true);
        });

    private static void RemoveIfEmpty(string folder) =>
        Try(() =>
        {
            if (Place.At(folder) == Standing.Folder && !Directory.EnumerateFileSystemEntries(folder).Any())
                Directory.Delete(folder);
        });

    /// <summary>Tidies up; if that cannot be done, the next run will try again.</summary>
    private static void Try(Action tidy)
    {
        try
        {
            tidy();
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            // All that the instructor asked for is done, or was refused for another reason.
        }
    }
}
