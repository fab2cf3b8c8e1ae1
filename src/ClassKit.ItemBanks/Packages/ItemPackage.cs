using System.IO.Compression;
using System.Text;
using System.Xml;
using System.Xml.Linq;
using ClassKit.Exercises.Authoring;
using ClassKit.ItemBanks.Items;

namespace ClassKit.ItemBanks.Packages;

/// <summary>Packs items with the manifest that the standard asks for.</summary>
internal static class ItemPackage
{
    private const string ManifestName = "imsmanifest.xml";
    private const string ItemType = "imsqti_item_xmlv3p0";

    /// <summary>
    /// What items show besides their own text is content of the web, of which each item says that it depends on it. 1EdTech Content
    /// Packaging 1.2, from memory.
    /// </summary>
    private const string PictureType = "webcontent";

    private static readonly XNamespace Packaging = "http://www.imsglobal.org/xsd/qti/qtiv3p0/imscp_v1p1";
    private static readonly DateTimeOffset EntryTime = new(1980, 1, 1, 0, 0, 0, TimeSpan.Zero);

    public static byte[] Write(string identifier, IReadOnlyList<BankItem> items)
    {
        using var bytes = new MemoryStream();
        using (var zip = new ZipArchive(bytes, ZipArchiveMode.Create, leaveOpen: true))
        {
            List<Exercise> pictured = [.. items.Select(item => item.Exercise).Where(exercise => exercise.Picture is not null).Distinct()];
            Put(zip, ManifestName, Manifest(identifier, items, pictured));
            foreach (var item in items)
                Put(zip, FileOf(item.Identifier), item.Write());
            foreach (var exercise in pictured)
            {
                using var stream = Entry(zip, ItemPicture.PathOf(exercise)!).Open();
                stream.Write(exercise.Picture!.ToBytes());
            }
        }

        return bytes.ToArray();
    }

    private static XElement Manifest(string identifier, IReadOnlyList<BankItem> items, IReadOnlyList<Exercise> pictured) =>
        new(
            Packaging + "manifest",
            new XAttribute("identifier", "bank_" + identifier.Replace('-', '_')),
            new XElement(
                Packaging + "metadata",
                new XElement(Packaging + "schema", "QTI Package"),
                new XElement(Packaging + "schemaversion", "3.0.0")
            ),
            new XElement(Packaging + "organizations"),
            new XElement(
                Packaging + "resources",
                items.Select(item =>
                    Resource(
                        "item_" + item.Identifier,
                        ItemType,
                        FileOf(item.Identifier),
                        item.Exercise.Picture is null ? null : PictureOf(item.Exercise)
                    )
                ),
                pictured.Select(exercise => Resource(PictureOf(exercise), PictureType, ItemPicture.PathOf(exercise)!, null))
            )
        );

    private static XElement Resource(string identifier, string type, string file, string? dependsOn) =>
        new(
            Packaging + "resource",
            new XAttribute("identifier", identifier),
            new XAttribute("type", type),
            new XAttribute("href", file),
            new XElement(Packaging + "file", new XAttribute("href", file)),
            dependsOn is null ? null : new XElement(Packaging + "dependency", new XAttribute("identifierref", dependsOn))
        );

    private static string PictureOf(Exercise exercise) => "picture_" + exercise.Id;

    private static string FileOf(string item) => $"items/{item}.xml";

    private static ZipArchiveEntry Entry(ZipArchive zip, string path)
    {
        var entry = zip.CreateEntry(path);
        entry.LastWriteTime = EntryTime;
        return entry;
    }

    private static void Put(ZipArchive zip, string path, XElement root)
    {
        using var stream = Entry(zip, path).Open();
        using var xml = XmlWriter.Create(
            stream,
            new()
            {
                Encoding = new UTF8Encoding(false),
                Indent = false,
                NewLineChars = "\n",
            }
        );
        new XDocument(root).Save(xml);
    }
}
