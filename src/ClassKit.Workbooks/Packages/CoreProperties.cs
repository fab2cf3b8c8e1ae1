using System.Xml.Linq;

namespace ClassKit.Workbooks.Packages;

/// <summary>The document properties of a package: title and maker, but no times.</summary>
internal sealed class CoreProperties
{
    public const string Part = "docProps/core.xml";
    private const string AppPart = "docProps/app.xml";
    private const string ContentType = "application/vnd.openxmlformats-package.core-properties+xml";
    private const string Maker = "ClassKit";
    private static readonly XNamespace Core = "http://schemas.openxmlformats.org/package/2006/metadata/core-properties";
    private static readonly XNamespace Dublin = "http://purl.org/dc/elements/1.1/";
    private static readonly XNamespace App = "http://schemas.openxmlformats.org/officeDocument/2006/extended-properties";

    private readonly string _title;

    private CoreProperties(string title) => _title = title;

    /// <summary>Removes the properties part, whatever its name is, and remembers the title.</summary>
    public static CoreProperties TakeFrom(SortedDictionary<string, byte[]> parts)
    {
        var title = "";
        foreach (var part in parts.Keys.Where(IsCoreProperties).ToList())
        {
            title = (string?)PartXml.Load(parts[part]).Root!.Element(Dublin + "title") ?? title;
            parts.Remove(part);
        }

        return new(title);
    }

    public void PutInto(SortedDictionary<string, byte[]> parts)
    {
        parts[Part] = PartXml.Save(
            new XDocument(
                new XElement(
                    Core + "coreProperties",
                    new XAttribute(XNamespace.Xmlns + "dc", Dublin),
                    new XElement(Dublin + "title", _title),
                    new XElement(Dublin + "creator", Maker),
                    new XElement(Dublin + "language", "en")
                )
            )
        );
        ContentTypes.Add(parts, Part, ContentType);
        if (parts.ContainsKey(AppPart))
            parts[AppPart] = PartXml.Save(new XDocument(new XElement(App + "Properties", new XElement(App + "Application", Maker))));
    }

    private static bool IsCoreProperties(string part) => part == Part || part.EndsWith(".psmdcp", StringComparison.Ordinal);
}
