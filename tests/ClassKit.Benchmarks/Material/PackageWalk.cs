using System.IO.Compression;
using System.Xml;

namespace ClassKit.Benchmarks.Material;

/// <summary>The least that any reader of a whole workbook has to do: unzip every XML part and walk it from end to end.</summary>
internal static class PackageWalk
{
    private static readonly XmlReaderSettings Settings = new() { DtdProcessing = DtdProcessing.Prohibit, XmlResolver = null };

    /// <summary>Walks a file and counts its XML nodes.</summary>
    public static int Nodes(byte[] file)
    {
        using var zip = new ZipArchive(new MemoryStream(file, writable: false), ZipArchiveMode.Read);
        var nodes = 0;
        foreach (var part in zip.Entries)
        {
            using var xml = XmlReader.Create(part.Open(), Settings);
            while (xml.Read())
                nodes++;
        }
        return nodes;
    }
}
