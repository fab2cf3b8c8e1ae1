using System.IO.Compression;
using ClassKit.Content;
using ClassKit.Grading;
using ClassKit.Workbooks;

namespace ClassKit.UseCases;

/// <summary>Reads every file of a returned folder or zip. Files are only ever read.</summary>
internal static class ReturnedFolder
{
    /// <summary>No practice workbook comes near this; a file beyond it is refused unread.</summary>
    private const long MaxFileBytes = 50L * 1024 * 1024;

    private const string Remedy = "Name the folder or the zip with the workbooks that came back.";

    /// <summary>Reads all files below a folder, or all entries of a zip.</summary>
    public static (IReadOnlyList<ReturnedFile> Files, Diagnostic? Problem) Read(string path)
    {
        try
        {
            if (Directory.Exists(path)) return (ReadFolder(path), null);
            if (File.Exists(path)) return ReadZip(path);
            return ([], new(path, null, "There is no such folder or zip", Remedy));
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            return ([], new(path, null, $"It cannot be read: {failure.Message}", Remedy));
        }
    }

    private static List<ReturnedFile> ReadFolder(string folder) =>
    [
        .. Directory.EnumerateFiles(folder, "*", SearchOption.AllDirectories)
            .Select(path => Path.GetRelativePath(folder, path).Replace('\\', '/'))
            .Order(StringComparer.Ordinal)
            .Select(relative => ReadFile(relative, Path.Combine(folder, relative))),
    ];

    private static ReturnedFile ReadFile(string relative, string path)
    {
        try
        {
            var length = new FileInfo(path).Length;
            return length > MaxFileBytes ? Refused(relative, TooLarge(length)) : Read(relative, File.ReadAllBytes(path));
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            return Refused(relative, $"The file cannot be opened: {failure.Message}");
        }
    }

    private static (IReadOnlyList<ReturnedFile> Files, Diagnostic? Problem) ReadZip(string path)
    {
        try
        {
            using var zip = ZipFile.OpenRead(path);
            return ([.. zip.Entries.Where(entry => !entry.FullName.EndsWith('/')).OrderBy(entry => entry.FullName, StringComparer.Ordinal).Select(ReadEntry)], null);
        }
        catch (InvalidDataException)
        {
            return ([], new(path, null, "It is neither a folder nor a zip", Remedy));
        }
    }

    private static ReturnedFile ReadEntry(ZipArchiveEntry entry)
    {
        try
        {
            // The size in the directory may lie, so reading stops by itself as well.
            if (entry.Length > MaxFileBytes) return Refused(entry.FullName, TooLarge(entry.Length));
            using var stream = entry.Open();
            using var bytes = new MemoryStream();
            var buffer = new byte[81920];
            for (int read; (read = stream.Read(buffer)) > 0;)
            {
                bytes.Write(buffer, 0, read);
                if (bytes.Length > MaxFileBytes) return Refused(entry.FullName, TooLarge(bytes.Length));
            }
            return Read(entry.FullName, bytes.ToArray());
        }
        catch (InvalidDataException)
        {
            return Refused(entry.FullName, "The file is damaged inside the zip.");
        }
    }

    /// <summary>Reads one file that is at hand.</summary>
    public static ReturnedFile Read(string relative, byte[] bytes)
    {
        if (Leftover(relative) is { } leftover) return Refused(relative, leftover);
        var reading = ReturnedWorkbookReader.Read(bytes);
        return new(relative, reading.Workbook, reading.Refusal?.Reason);
    }

    private static ReturnedFile Refused(string relative, string reason) => new(relative, null, reason);

    private static string TooLarge(long bytes) =>
        $"The file is larger than any practice workbook ({bytes / (1024 * 1024)} MB): remove pictures and send it again.";

    /// <summary>Files that programs leave beside the workbook, which nobody handed in.</summary>
    private static string? Leftover(string relative)
    {
        var name = Path.GetFileName(relative);
        return name.StartsWith("~$", StringComparison.Ordinal) || name.StartsWith(".~lock.", StringComparison.Ordinal)
            ? "This is the lock file of a program that had the workbook open, not a workbook."
            : name is "Thumbs.db" or ".DS_Store" or "desktop.ini" || name.StartsWith("._", StringComparison.Ordinal)
                ? "This is a file that the operating system left there, not a workbook."
                : null;
    }
}
