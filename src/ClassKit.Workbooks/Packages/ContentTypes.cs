using System.Xml.Linq;

namespace ClassKit.Workbooks.Packages;

/// <summary>The list of what every part is.</summary>
/// <remarks>
/// The saving library declares the ending .xml itself to be a workbook. That is legal and unusual; naming every part's own type
/// is what all spreadsheet programs write and read.
/// </remarks>
internal static class ContentTypes
{
    public const string Part = "[Content_Types].xml";
    private const string Xml = "application/xml";
    private static readonly XNamespace Space = "http://schemas.openxmlformats.org/package/2006/content-types";

    public static void Rewrite(SortedDictionary<string, byte[]> parts)
    {
        var types = PartXml.Load(parts[Part]).Root!;
        var byEnding = types
            .Elements(Space + "Default")
            .ToDictionary(
                type => (string)type.Attribute("Extension")!,
                type => (string)type.Attribute("ContentType")!,
                StringComparer.OrdinalIgnoreCase
            );
        var byName = types
            .Elements(Space + "Override")
            .ToDictionary(
                type => ((string)type.Attribute("PartName")!).TrimStart('/'),
                type => (string)type.Attribute("ContentType")!,
                StringComparer.Ordinal
            );

        var rewritten = new XElement(Space + "Types", Default("xml", Xml));
        foreach (var ending in byEnding.Keys.Where(ending => ending is not ("xml" or "psmdcp")).Order(StringComparer.Ordinal))
            rewritten.Add(Default(ending, byEnding[ending]));
        foreach (var part in parts.Keys.Where(part => part != Part))
        {
            if ((byName.GetValueOrDefault(part) ?? XmlTypeOf(part, byEnding)) is { } type)
                rewritten.Add(
                    new XElement(Space + "Override", new XAttribute("PartName", "/" + part), new XAttribute("ContentType", type))
                );
        }

        parts[Part] = PartXml.Save(new XDocument(rewritten));
    }

    public static void Add(SortedDictionary<string, byte[]> parts, string part, string type)
    {
        var xml = PartXml.Load(parts[Part]);
        xml.Root!.Add(new XElement(Space + "Override", new XAttribute("PartName", "/" + part), new XAttribute("ContentType", type)));
        parts[Part] = PartXml.Save(xml);
    }

    public static void AddDefault(SortedDictionary<string, byte[]> parts, string ending, string type)
    {
        var xml = PartXml.Load(parts[Part]);
        xml.Root!.AddFirst(Default(ending, type));
        parts[Part] = PartXml.Save(xml);
    }

    private static XElement Default(string ending, string type) =>
        new(Space + "Default", new XAttribute("Extension", ending), new XAttribute("ContentType", type));

    private static string? XmlTypeOf(string part, Dictionary<string, string> byEnding) =>
        part.EndsWith(".xml", StringComparison.OrdinalIgnoreCase) ? byEnding.GetValueOrDefault("xml", Xml) : null;
}
