using System.IO.Compression;
using ClassKit.Grading.Findings.Refusals;
using ClassKit.Workbooks.Returned.Packages;

namespace ClassKit.UseCases.Intake;

/// <summary>Zip archives that hold files, as opposed to those that are documents, such as workbooks.</summary>
internal static class Archive
{
    /// <summary>Parts by which documents made of a zip archive are known: Office, OpenDocument, Numbers.</summary>
    private static readonly string[] DocumentParts =
    [
        "[Content_Types].xml",
        "mimetype",
        "META-INF/manifest.xml",
        "_rels/.rels",
        "xl/workbook.xml",
        "content.xml",
    ];

    /// <summary>The files in an archive and in those inside it, one at a time; the file itself if it is no archive.</summary>
    public static IEnumerable<ReturnedItem> Open(ReturnedItem item) => Open(item, 1, ArchiveBudget.Bounded);

    /// <summary>The files in an open archive, in the order of their names.</summary>
    /// <param name="archive">The archive.</param>
    /// <param name="path">Where it lies, with a slash at its end; empty for the one that holds everything.</param>
    /// <param name="depth">How many archives lie around its files.</param>
    /// <param name="budget">What may come out; null if every archive inside has a budget of its own.</param>
    public static IEnumerable<ReturnedItem> Entries(ZipArchive archive, string path, int depth, ArchiveBudget? budget)
    {
        var names = new EntryNames();
        foreach (var entry in archive.Entries.Where(entry => !IsFolder(entry)).OrderBy(entry => entry.FullName, StringComparer.Ordinal))
        {
            var inside = path + names.Shown(entry.FullName);
            var own = budget ?? ArchiveBudget.Bounded;
            if (!own.TryEntry())
            {
                yield return ReturnedItem.Packed(path.TrimEnd('/'), PackingFault.TooManyFiles, IntakeLimits.Entries);
                yield break;
            }

            var item = ZipEntryBytes.Read(entry, inside, budget is null ? ArchiveBudget.Unbounded : own);
            foreach (var file in Guarded.Each(() => Open(item, depth, own), failure => ReturnedItem.Failed(inside, failure)))
                yield return file;
        }
    }

    private static IEnumerable<ReturnedItem> Open(ReturnedItem item, int depth, ArchiveBudget budget)
    {
        if (Leftovers.Of(item.Path) is not null || item.Content is not { } bytes || !bytes.AsSpan().StartsWith("PK"u8))
            return [item];
        if (!ZipDirectory.IsWithin(bytes, IntakeLimits.Entries, IntakeLimits.DirectoryBytes))
            return [ReturnedItem.Packed(item.Path, PackingFault.TooManyNames, IntakeLimits.Entries)];
        var archive = TryOpen(bytes);
        if (archive is null)
            return [LooksPacked(item.Path) ? ReturnedItem.Packed(item.Path, PackingFault.Broken) : item];
        using (archive)
        {
            if (IsDocument(archive))
                return [item];
            if (archive.Entries.All(IsFolder))
                return [ReturnedItem.Packed(item.Path, PackingFault.Empty)];
            if (depth > IntakeLimits.Depth)
                return [ReturnedItem.Packed(item.Path, PackingFault.TooDeep, IntakeLimits.Depth)];
        }

        return Unpack(bytes, item.Path, depth, budget).Select(inside => inside.OutOf(item.Dated));
    }

    private static IEnumerable<ReturnedItem> Unpack(byte[] bytes, string path, int depth, ArchiveBudget budget)
    {
        using var archive = TryOpen(bytes)!;
        foreach (var file in Entries(archive, path + "/", depth + 1, budget))
            yield return file;
    }

    /// <summary>True for an archive that is no document; the stream is back at its beginning.</summary>
    public static bool IsPacked(Stream stream)
    {
        using var archive = TryOpen(stream, leaveOpen: true);
        var isPacked = archive is not null && !IsDocument(archive);
        stream.Position = 0;
        return isPacked;
    }

    private static ZipArchive? TryOpen(byte[] bytes) => TryOpen(new MemoryStream(bytes, writable: false), leaveOpen: false);

    private static ZipArchive? TryOpen(Stream stream, bool leaveOpen) =>
        Guarded.Of(
            () =>
            {
                var archive = new ZipArchive(stream, ZipArchiveMode.Read, leaveOpen, ZipNames.Instance);

                // The list of entries is read only when it is asked for.
                _ = archive.Entries.Count;
                return archive;
            },
            _ => (ZipArchive?)null
        );

    private static bool IsDocument(ZipArchive archive) =>
        archive.Entries.Any(entry =>
            DocumentParts.Contains(entry.FullName, StringComparer.OrdinalIgnoreCase)
            || entry.FullName.EndsWith(".iwa", StringComparison.OrdinalIgnoreCase)
        );

    /// <summary>True for an entry that is a folder, and no file.</summary>
    public static bool IsFolder(ZipArchiveEntry entry) => entry.FullName.EndsWith('/') || entry.FullName.EndsWith('\\');

    private static bool LooksPacked(string path) => path.EndsWith(".zip", StringComparison.OrdinalIgnoreCase);
}
