using System.IO.Compression;

namespace ClassKit.UseCases.Intake;

/// <summary>Takes an archive that came back apart, one layer of it, so that each of its files lies in a folder by itself.</summary>
public static class ArchiveLayer
{
    /// <summary>
    /// Writes its files below a folder. What does not come out whole comes out as far as it does: the archive stays as it is.
    /// </summary>
    /// <param name="archive">A zip.</param>
    /// <param name="folder">An empty folder that is there.</param>
    /// <param name="named">Makes of the name of a file in the archive the path that it gets below the folder; two may come to the
    /// same.</param>
    /// <returns>
    /// For each file its place in the archive, as the account of returned files says it, and its path below the folder; null for what is no
    /// archive that can be opened.
    /// </returns>
    /// <exception cref="IOException">There is no room, or it cannot be read or written.</exception>
    /// <exception cref="UnauthorizedAccessException">The system refuses it.</exception>
    public static IReadOnlyDictionary<string, string>? Unpack(string archive, string folder, Func<string, string> named)
    {
        ArgumentNullException.ThrowIfNull(named);
        using var stream = File.OpenRead(archive);
        if (!Archive.IsPacked(stream))
            return null;
        var budget = stream.Length > IntakeLimits.FileBytes ? ArchiveBudget.Unbounded : ArchiveBudget.Bounded;
        using var zip = new ZipArchive(stream, ZipArchiveMode.Read, leaveOpen: true, ZipNames.Instance);
        var places = new Dictionary<string, string>(StringComparer.Ordinal);
        var taken = new EntryNames();
        var shown = new EntryNames();
        foreach (var entry in zip.Entries.Where(entry => !Archive.IsFolder(entry)).OrderBy(entry => entry.FullName, StringComparer.Ordinal))
        {
            if (!budget.TryEntry())
                break;
            var place = shown.Shown(entry.FullName);
            var item = ZipEntryBytes.Read(entry, place, budget);
            places[place] = taken.Shown(named(place));
            var file = Path.Combine(folder, places[place]);
            Directory.CreateDirectory(Path.GetDirectoryName(file)!);
            File.WriteAllBytes(file, item.Content ?? []);
            if (item.Dated is { } dated && dated.Year > 1980)
                File.SetLastWriteTime(file, dated);
        }
        return places;
    }
}
