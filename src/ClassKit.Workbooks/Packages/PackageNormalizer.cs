using System.IO.Compression;

namespace ClassKit.Workbooks;

/// <summary>Rewrites a freshly saved .xlsx so that it says what is in it and nothing of when, where and by which process it was saved.</summary>
/// <remarks>
/// The libraries that save packages stamp the time on every entry, put the time into the document properties, and draw random
/// names for the properties part and its relationship. All are replaced, so that the same content gives the same bytes.
/// </remarks>
public static class PackageNormalizer
{
    /// <summary>The earliest time that a zip entry can carry.</summary>
    private static readonly DateTimeOffset EntryTime = new(1980, 1, 1, 0, 0, 0, TimeSpan.Zero);

    /// <summary>The same package with fixed times, order, names and properties.</summary>
    /// <param name="package">A package saved by this program; returned workbooks are not to be trusted with this.</param>
    public static byte[] Normalize(byte[] package)
    {
        ArgumentNullException.ThrowIfNull(package);
        var parts = ReadParts(package);
        var properties = CoreProperties.TakeFrom(parts);
        ContentTypes.Rewrite(parts);
        RootRelationships.Rewrite(parts);
        properties.PutInto(parts);
        SpreadsheetTidying.Rewrite(parts);
        return WriteParts(parts);
    }

    private static SortedDictionary<string, byte[]> ReadParts(byte[] package)
    {
        var parts = new SortedDictionary<string, byte[]>(PartOrder.Instance);
        using var archive = new ZipArchive(new MemoryStream(package), ZipArchiveMode.Read);
        foreach (var entry in archive.Entries)
        {
            using var stream = entry.Open();
            using var content = new MemoryStream();
            stream.CopyTo(content);
            parts.Add(entry.FullName, content.ToArray());
        }

        return parts;
    }

    private static byte[] WriteParts(SortedDictionary<string, byte[]> parts)
    {
        using var package = new MemoryStream();
        using (var archive = new ZipArchive(package, ZipArchiveMode.Create, leaveOpen: true))
        {
            foreach (var (name, content) in parts)
            {
                var entry = archive.CreateEntry(name, CompressionLevel.Optimal);
                entry.LastWriteTime = EntryTime;
                using var stream = entry.Open();
                stream.Write(content);
            }
        }

        return package.ToArray();
    }
}
