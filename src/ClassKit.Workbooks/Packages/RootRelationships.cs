using System.Globalization;
using System.Xml.Linq;

namespace ClassKit.Workbooks.Packages;

/// <summary>The relationships of the package itself. Nothing refers to their ids, so that they can be numbered anew.</summary>
internal static class RootRelationships
{
    public const string Part = "_rels/.rels";
    private const string CorePropertiesType = "http://schemas.openxmlformats.org/package/2006/relationships/metadata/core-properties";
    private static readonly XNamespace Space = "http://schemas.openxmlformats.org/package/2006/relationships";

    public static void Rewrite(SortedDictionary<string, byte[]> parts)
    {
        var relationships = PartXml
            .Load(parts[Part])
            .Root!.Elements()
            .Select(relationship =>
                (Type: (string)relationship.Attribute("Type")!, Target: ((string)relationship.Attribute("Target")!).TrimStart('/'))
            )
            .Where(relationship => relationship.Type != CorePropertiesType)
            .Append((Type: CorePropertiesType, Target: CoreProperties.Part))
            .OrderBy(relationship => relationship.Target, PartOrder.Instance)
            .Select(
                (relationship, index) =>
                    new XElement(
                        Space + "Relationship",
                        new XAttribute("Id", "rId" + (index + 1).ToString(CultureInfo.InvariantCulture)),
                        new XAttribute("Type", relationship.Type),
                        new XAttribute("Target", relationship.Target)
                    )
            );
        parts[Part] = PartXml.Save(new XDocument(new XElement(Space + "Relationships", relationships)));
    }
}
