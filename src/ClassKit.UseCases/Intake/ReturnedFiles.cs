using System.IO.Compression;
using System.IO.Enumeration;
using ClassKit.Content;

namespace ClassKit.UseCases;

/// <summary>Every file of what was returned, through folders and archives, one at a time. Files are only ever read.</summary>
internal sealed class ReturnedFiles
{
    private const string Remedy = "Name the folder or the zip with the workbooks that came back.";

    private readonly string _path;

    private ReturnedFiles(string path) => _path = path;

    /// <summary>Looks whether there is a folder or a zip.</summary>
    public static (ReturnedFiles? Files, Diagnostic? Problem) At(string path)
    {
        try
        {
            if (Directory.Exists(path)) return (new(path), null);
            if (!File.Exists(path)) return (null, new(path, null, "There is no such folder or zip", Remedy));
            using var archive = OpenZip(path);
            return (new(path), null);
        }
        catch (InvalidDataException)
        {
            return (null, new(path, null, "It is neither a folder nor a zip", Remedy));
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            return (null, new(path, null, $"It cannot be read: {failure.Message}", Remedy));
        }
    }

    /// <summary>Reads the files in the order of their paths; each is read when it is asked for.</summary>
    public IEnumerable<ReturnedItem> Read() => Directory.Exists(_path) ? InFolder() : InZip();

    private IEnumerable<ReturnedItem> InFolder()
    {
        foreach (var (path, isFile) in Found(_path).OrderBy(found => found.Path, StringComparer.Ordinal))
        {
            if (!isFile) yield return ReturnedItem.Refused(path, "This folder lies too deep, or is a link to another place; what is in it was not looked at.");
            else foreach (var item in IsLargeZip(path) ? InZip(path) : Archive.Open(ReadFile(path))) yield return item;
        }
    }

    /// <summary>The files below a folder, and the folders that are not followed.</summary>
    private static FileSystemEnumerable<(string Path, bool IsFile)> Found(string folder)
    {
        bool IsFollowed(ref FileSystemEntry entry) =>
            (entry.Attributes & FileAttributes.ReparsePoint) == 0 && Path.GetRelativePath(folder, entry.Directory.ToString()).Count('/') < IntakeLimits.Folders;
        return new FileSystemEnumerable<(string Path, bool IsFile)>(
            folder,
            (ref FileSystemEntry entry) => (Path.GetRelativePath(folder, entry.ToFullPath()).Replace('\\', '/'), !entry.IsDirectory),
            new EnumerationOptions { RecurseSubdirectories = true, AttributesToSkip = 0, IgnoreInaccessible = false })
        {
            ShouldIncludePredicate = (ref FileSystemEntry entry) => !entry.IsDirectory || !IsFollowed(ref entry),
            ShouldRecursePredicate = IsFollowed,
        };
    }

    private ReturnedItem ReadFile(string relative)
    {
        try
        {
            var file = new FileInfo(Path.Combine(_path, relative));
            if (file.LinkTarget is not null) return ReturnedItem.Refused(relative, "This is a link to another place; what it leads to was not looked at. Please hand in the workbook itself.");
            if (file.Length > IntakeLimits.FileBytes) return ReturnedItem.TooLarge(relative, file.Length);

            // Pipes and devices have no length either, and reading them may never end.
            return new(relative, file.Length == 0 ? [] : File.ReadAllBytes(file.FullName), null, file.LastWriteTimeUtc);
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            return ReturnedItem.Refused(relative, $"The file cannot be opened: {failure.Message}");
        }
    }

    /// <summary>True for an archive too large to be one student's: it holds what a class handed in.</summary>
    private bool IsLargeZip(string relative)
    {
        try
        {
            var file = new FileInfo(Path.Combine(_path, relative));
            if (file.LinkTarget is not null || file.Length <= IntakeLimits.FileBytes) return false;
            using var archive = OpenZip(file.FullName);
            return true;
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException or InvalidDataException)
        {
            return false;
        }
    }

    private IEnumerable<ReturnedItem> InZip(string relative = "")
    {
        using var archive = OpenZip(Path.Combine(_path, relative));
        foreach (var item in Archive.Entries(archive, relative.Length == 0 ? "" : relative + "/", 1, budget: null)) yield return item;
    }

    private static ZipArchive OpenZip(string path)
    {
        var archive = new ZipArchive(File.OpenRead(path), ZipArchiveMode.Read, leaveOpen: false, ZipNames.Instance);
        _ = archive.Entries.Count;
        return archive;
    }
}
