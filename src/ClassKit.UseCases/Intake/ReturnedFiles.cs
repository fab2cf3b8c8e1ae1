using System.IO.Compression;
using ClassKit.Content.Diagnostics;
using ClassKit.Content.Sources;
using ClassKit.Grading.Findings.Refusals;

namespace ClassKit.UseCases.Intake;

/// <summary>Every file of what was returned, through folders and archives, one at a time. Files are only ever read.</summary>
/// <remarks>Reading never throws: what cannot be opened is an item with the reason, and what comes after it is read all the same.</remarks>
public sealed class ReturnedFiles
{
    private const string Remedy = "Name the folder or the zip with the workbooks that came back.";

    private readonly Func<Listing> _list;

    private ReturnedFiles(Func<Listing> list) => _list = list;

    /// <summary>
    /// Files that are handed over; archives among them are opened. One alone that is an archive holds what the whole class returned.
    /// </summary>
    public static ReturnedFiles Of(params IReadOnlyList<Upload> uploads) =>
        new(() =>
            new(
                uploads.Count,
                uploads.SelectMany(upload =>
                    Guarded.Each(() => InUpload(upload, isAlone: uploads.Count == 1), failure => ReturnedItem.Failed(upload.Path, failure))
                )
            )
        );

    /// <summary>Every file below a folder of a source tree.</summary>
    public static ReturnedFiles Below(Source folder)
    {
        ArgumentNullException.ThrowIfNull(folder);
        var tree = folder.Library.Tree;
        return Of([
            .. Paths("").Order(StringComparer.Ordinal).Select(path => new Upload(path, () => tree.Open(Path.Combine(folder.Path, path)))),
        ]);

        IEnumerable<string> Paths(string inside) =>
            tree.Files(Path.Combine(folder.Path, inside))
                .Select(name => inside + name)
                .Concat(tree.Folders(Path.Combine(folder.Path, inside)).SelectMany(name => Paths(inside + name + "/")));
    }

    /// <summary>Looks whether there is a folder or a zip.</summary>
    public static Reading<ReturnedFiles> At(string path)
    {
        ArgumentNullException.ThrowIfNull(path);
        Reading<ReturnedFiles> Problem(string found) => new(null, [new(path, null, found, Remedy)]);
        return Guarded.Of<Reading<ReturnedFiles>>(
            () =>
            {
                if (Directory.Exists(path))
                    return new(new(() => InFolder(path)), []);
                if (!File.Exists(path))
                    return Problem("There is no such folder or zip");
                using var archive = OpenZip(path);
                var count = archive.Entries.Count;
                return new(new(() => new(count, InZip(new(path), ""))), []);
            },
            failure =>
                Problem(
                    failure is IOException or UnauthorizedAccessException
                        ? $"It cannot be read: {failure.Message.TrimEnd('.')}"
                        : "It is neither a folder nor a zip that can be opened"
                )
        );
    }

    /// <summary>Reads the files in the order of their paths; each is read when it is asked for.</summary>
    internal IEnumerable<ReturnedItem> Read() => List().Items;

    /// <summary>The same with how many there are.</summary>
    internal Listing List() => _list();

    /// <param name="Count">How many there are; those inside archives are not counted.</param>
    /// <param name="Items">Each is read when it is asked for.</param>
    internal sealed record Listing(int Count, IEnumerable<ReturnedItem> Items);

    private static Listing InFolder(string path)
    {
        var found = FolderWalk.Through(path);
        return new(
            found.Count,
            found.SelectMany(one =>
                one.File is { } file
                    ? Guarded.Each(
                        () => IsLargeZip(file) ? InZip(file, one.Path + "/") : Archive.Open(ReadFile(file, one.Path)),
                        failure => ReturnedItem.Failed(one.Path, failure)
                    )
                : one.ByBytes is { } upload
                    ? Guarded.Each(() => InUpload(upload, isAlone: false), failure => ReturnedItem.Failed(one.Path, failure))
                : [one.Refused!]
            )
        );
    }

    private static IEnumerable<ReturnedItem> InUpload(Upload upload, bool isAlone)
    {
        using var stream = upload.Open();
        var isLarge = stream.CanSeek && stream.Length > IntakeLimits.FileBytes;
        if (stream.CanSeek && (isAlone || isLarge) && Archive.IsPacked(stream))
        {
            using var archive = new ZipArchive(stream, ZipArchiveMode.Read, leaveOpen: true, ZipNames.Instance);
            foreach (var item in Archive.Entries(archive, isAlone ? "" : upload.Path + "/", 1, budget: null))
                yield return item.OutOf(upload.Dated);
            yield break;
        }

        var bytes = isLarge ? null : BoundedBytes.Read(stream, IntakeLimits.FileBytes);
        if (bytes is null)
            yield return ReturnedItem.TooLarge(upload.Path, stream.CanSeek ? stream.Length : IntakeLimits.FileBytes);
        else
            foreach (var item in Archive.Open(new(upload.Path, bytes, null, upload.Dated)))
                yield return item;
    }

    private static ReturnedItem ReadFile(FileInfo file, string path) =>
        Guarded.Of(
            () =>
            {
                if (file.LinkTarget is not null)
                    return ReturnedItem.Refused(path, new Refusal.Link());
                if (file.Length > IntakeLimits.FileBytes)
                    return ReturnedItem.TooLarge(path, file.Length);

                // Pipes and devices have no length either, and reading them may never end.
                return new(path, file.Length == 0 ? [] : File.ReadAllBytes(file.FullName), null, file.LastWriteTimeUtc);
            },
            failure => ReturnedItem.Failed(path, failure)
        );

    /// <summary>True for an archive too large to be one student's: it holds what a class handed in.</summary>
    private static bool IsLargeZip(FileInfo file) =>
        Guarded.Of(
            () =>
            {
                if (file.LinkTarget is not null || file.Length <= IntakeLimits.FileBytes)
                    return false;
                using var archive = OpenZip(file.FullName);
                return true;
            },
            _ => false
        );

    private static IEnumerable<ReturnedItem> InZip(FileInfo file, string path) =>
        Guarded.Each(() => Entries(file, path), failure => ReturnedItem.Failed(path.Length == 0 ? file.Name : path.TrimEnd('/'), failure));

    private static IEnumerable<ReturnedItem> Entries(FileInfo file, string path)
    {
        using var archive = OpenZip(file.FullName);
        foreach (var item in Archive.Entries(archive, path, 1, budget: null))
            yield return item.OutOf(file.LastWriteTimeUtc);
    }

    private static ZipArchive OpenZip(string path)
    {
        // Whoever is refused must leave the file free: on Windows nobody could put a whole one in its place.
        var file = File.OpenRead(path);
        try
        {
            var archive = new ZipArchive(file, ZipArchiveMode.Read, leaveOpen: false, ZipNames.Instance);
            _ = archive.Entries.Count;
            return archive;
        }
        catch
        {
            file.Dispose();
            throw;
        }
    }
}
