using System.IO.Compression;
using System.Text;
using System.Xml;
using System.Xml.Linq;

namespace ClassKit.ItemBanks.Packages;

/// <summary>Packs items with the manifest that the standard asks for.</summary>
internal static class ItemPackage
{
    private const string ManifestName = "imsmanifest.xml";
    private const string ItemType = "imsqti_item_xmlv3p0";

    private static readonly XNamespace Packaging = "http://www.imsglobal.org/xsd/qti/qtiv3p0/imscp_v1p1";
    private static readonly DateTimeOffset EntryTime = new(1980, 1, 1, 0, 0, 0, TimeSpan.Zero);

    public static byte[] Write(string identifier, IReadOnlyList<BankItem> items)
    {
        using var bytes = new MemoryStream();
        using (var zip = new ZipArchive(bytes, ZipArchiveMode.Create, leaveOpen: true))
        {
            Put(zip, ManifestName, Manifest(identifier, [.. items.Select(item => item.Identifier)]));
            foreach (var item in items)
                Put(zip, FileOf(item.Identifier), item.Write());
        }

        return bytes.ToArray();
    }

    private static XElement Manifest(string identifier, IReadOnlyList<string> items) => new(
        Packaging + "manifest",
        new XAttribute("identifier", "bank_" + identifier.Replace('-', '_')),
        new XElement(Packaging + "metadata", new XElement(Packaging + "schema", "QTI Package"), new XElement(Packaging + "schemaversion", "3.0.0")),
        new XElement(Packaging + "organizations"),
        new XElement(Packaging + "resources", items.Select(item => new XElement(
            Packaging + "resource",
            new XAttribute("identifier", "item_" + item), new XAttribute("type", ItemType), new XAttribute("href", FileOf(item)),
            new XElement(Packaging + "file", new XAttribute("href", FileOf(item)))))));

    private static string FileOf(string item) => $"items/{item}.xml";

    private static void Put(ZipArchive zip, string path, XElement root)
    {
        var entry = zip.CreateEntry(path);
        entry.LastWriteTime = EntryTime;
        using var stream = entry.Open();
        using var xml = XmlWriter.Create(stream, new() { Encoding = new UTF8Encoding(false), Indent = false, NewLineChars = "\n" });
        new XDocument(root).Save(xml);
    }
}
