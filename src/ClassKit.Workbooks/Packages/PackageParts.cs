using System.IO.Compression;
using ClassKit.Workbooks.Returned.Packages;
using ClassKit.Workbooks.Returned.SpreadsheetMl;

namespace ClassKit.Workbooks.Packages;

/// <summary>The parts of a package that this program made itself, in memory by name.</summary>
internal static class PackageParts
{
    /// <summary>The earliest time that a zip entry can carry.</summary>
    private static readonly DateTimeOffset EntryTime = new(1980, 1, 1, 0, 0, 0, TimeSpan.Zero);

    public static SortedDictionary<string, byte[]> Read(byte[] package)
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

    public static byte[] Write(SortedDictionary<string, byte[]> parts)
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

    /// <summary>The part of every sheet, by the name on its tab.</summary>
    public static IReadOnlyDictionary<string, string> SheetParts(byte[] package)
    {
        const string Workbook = "xl/workbook.xml";
        using var opened = Package.Open(package, ReadLimits.Own);
        var relationships = Relationships.Of(opened, Workbook);
        return WorkbookPart
            .Read(opened, Workbook, new ReadBudget(ReadLimits.Own))
            .Sheets.ToDictionary(
                sheet => sheet.Name,
                sheet => relationships.Find(sheet.RelationshipId)!.Value.Part,
                StringComparer.OrdinalIgnoreCase
            );
    }
}
