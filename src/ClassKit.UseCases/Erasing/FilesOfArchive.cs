using System.IO.Compression;
using ClassKit.UseCases.Intake;
using ClassKit.Workbooks.Returned.Packages;

namespace ClassKit.UseCases.Erasing;

/// <summary>The files in an archive, by their names there. What comes out of it is bounded as what students hand in is.</summary>
internal sealed class FilesOfArchive : ILookedThrough
{
    private readonly byte[] _archive;
    private readonly Dictionary<string, byte[]?> _read = new(StringComparer.Ordinal);

    private FilesOfArchive(byte[] archive) => _archive = archive;

    /// <summary>Their names, in the order of the archive; of two by one name, one.</summary>
    public IReadOnlyCollection<string> Names => _read.Keys;

    /// <summary>True where two files have one name: such an archive is left as it is.</summary>
    public bool HasNamesakes { get; private init; }

    /// <summary>Opens one; null for bytes that are none, or that hold more than may come out.</summary>
    public static FilesOfArchive? Open(byte[] archive)
    {
        if (!ZipDirectory.IsWithin(archive, IntakeLimits.Entries, IntakeLimits.DirectoryBytes))
            return null;
        return Guarded.Of(() => Read(archive), _ => (FilesOfArchive?)null);
    }

    public byte[]? Bytes(string file) => _read[file];

    public IEnumerable<string> In(string folder) => Names.Where(name => Path.GetDirectoryName(name) == folder);

    /// <summary>
    /// The archive with other files in the places of theirs, and without those for which there is none; every other file is as it was. Null
    /// if it cannot be written so.
    /// </summary>
    public byte[]? With(IReadOnlyDictionary<string, byte[]?> changes) =>
        HasNamesakes ? null : Guarded.Of(() => Written(changes), _ => (byte[]?)null);

    private static FilesOfArchive Read(byte[] bytes)
    {
        using var archive = new ZipArchive(
            new MemoryStream(bytes, writable: false),
            ZipArchiveMode.Read,
            leaveOpen: false,
            ZipNames.Instance
        );
        List<ZipArchiveEntry> files = [.. archive.Entries.Where(entry => !entry.FullName.EndsWith('/') && !entry.FullName.EndsWith('\\'))];
        var found = new FilesOfArchive(bytes) { HasNamesakes = files.DistinctBy(entry => entry.FullName).Count() < files.Count };
        var budget = ArchiveBudget.Bounded;
        foreach (var entry in files)
            found._read.TryAdd(entry.FullName, ZipEntryBytes.Read(entry, entry.FullName, budget).Content);
        return found;
    }

    private byte[] Written(IReadOnlyDictionary<string, byte[]?> changes)
    {
        using var stream = new MemoryStream();
        stream.Write(_archive);
        using (var archive = new ZipArchive(stream, ZipArchiveMode.Update, leaveOpen: true, ZipNames.Instance))
        {
            foreach (var (name, content) in changes)
            {
                var entry = archive.GetEntry(name)!;
                if (content is null)
                {
                    entry.Delete();
                    continue;
                }
                using var file = entry.Open();
                file.SetLength(0);
                file.Write(content);
            }
        }
        return stream.ToArray();
    }
}
