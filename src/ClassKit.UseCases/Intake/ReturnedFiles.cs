using System.IO.Compression;
using ClassKit.Content;

namespace ClassKit.UseCases;

/// <summary>Every file of what was returned, through folders and archives, one at a time. Files are only ever read.</summary>
/// <remarks>Reading never throws: what cannot be opened is an item with the reason, and what comes after it is read all the same.</remarks>
internal sealed class ReturnedFiles
{
    private const string Remedy = "Name the folder or the zip with the workbooks that came back.";

    private readonly string _path;

    private ReturnedFiles(string path) => _path = path;

    /// <summary>Looks whether there is a folder or a zip.</summary>
    public static (ReturnedFiles? Files, Diagnostic? Problem) At(string path)
    {
        Diagnostic Problem(string found) => new(path, null, found, Remedy);
        return Attempt.Of<(ReturnedFiles?, Diagnostic?)>(
            () =>
            {
                if (Directory.Exists(path)) return (new(path), null);
                if (!File.Exists(path)) return (null, Problem("There is no such folder or zip"));
                using var archive = OpenZip(path);
                return (new(path), null);
            },
            failure => (null, Problem(failure is IOException or UnauthorizedAccessException ? $"It cannot be read: {failure.Message.TrimEnd('.')}" : "It is neither a folder nor a zip that can be opened")));
    }

    /// <summary>Reads the files in the order of their paths; each is read when it is asked for.</summary>
    public IEnumerable<ReturnedItem> Read() => Directory.Exists(_path) ? InFolder() : InZip(new(_path), "");

    private IEnumerable<ReturnedItem> InFolder() => FolderWalk.Through(_path).SelectMany(found =>
        found.File is { } file
            ? Attempt.Each(() => IsLargeZip(file) ? InZip(file, found.Path + "/") : Archive.Open(ReadFile(file, found.Path)), failure => ReturnedItem.Failed(found.Path, failure))
            : [found.Refused!]);

    private static ReturnedItem ReadFile(FileInfo file, string path) => Attempt.Of(
        () =>
        {
            if (file.LinkTarget is not null) return ReturnedItem.Refused(path, "This is a link to another place; what it leads to was not looked at. Please hand in the workbook itself.");
            if (file.Length > IntakeLimits.FileBytes) return ReturnedItem.TooLarge(path, file.Length);

            // Pipes and devices have no length either, and reading them may never end.
            return new(path, file.Length == 0 ? [] : File.ReadAllBytes(file.FullName), null, file.LastWriteTimeUtc);
        },
        failure => ReturnedItem.Failed(path, failure));

    /// <summary>True for an archive too large to be one student's: it holds what a class handed in.</summary>
    private static bool IsLargeZip(FileInfo file) => Attempt.Of(
        () =>
        {
            if (file.LinkTarget is not null || file.Length <= IntakeLimits.FileBytes) return false;
            using var archive = OpenZip(file.FullName);
            return true;
        },
        _ => false);

    private static IEnumerable<ReturnedItem> InZip(FileInfo file, string path) =>
        Attempt.Each(() => Entries(file, path), failure => ReturnedItem.Failed(path.Length == 0 ? file.Name : path.TrimEnd('/'), failure));

    private static IEnumerable<ReturnedItem> Entries(FileInfo file, string path)
    {
        using var archive = OpenZip(file.FullName);
        foreach (var item in Archive.Entries(archive, path, 1, budget: null)) yield return item;
    }

    private static ZipArchive OpenZip(string path)
    {
        var archive = new ZipArchive(File.OpenRead(path), ZipArchiveMode.Read, leaveOpen: false, ZipNames.Instance);
        _ = archive.Entries.Count;
        return archive;
    }
}
