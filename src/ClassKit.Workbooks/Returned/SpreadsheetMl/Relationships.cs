using System.Xml;
using ClassKit.Grading.Findings.Refusals;
using ClassKit.Workbooks.Returned.Packages;

namespace ClassKit.Workbooks.Returned.SpreadsheetMl;

/// <summary>What a part points to: type and full part name by id. Pointers outside the package are left out.</summary>
internal sealed class Relationships
{
    private readonly Dictionary<string, (string Type, string Part)> _byId = new(StringComparer.Ordinal);

    private Relationships() { }

    /// <summary>The relationships of a part; of the package itself for the empty name.</summary>
    public static Relationships Of(Package package, string part)
    {
        var slash = part.LastIndexOf('/');
        var folder = slash < 0 ? "" : part[..(slash + 1)];
        var relationships = new Relationships();
        XmlPart.TryRead(package, $"{folder}_rels/{part[(slash + 1)..]}.rels", xml =>
        {
            while (xml.Next())
            {
                if (xml.NodeType == XmlNodeType.Element && xml.LocalName == "Relationship")
                    relationships.Add(xml, folder, package.Limits.Relationships);
            }
        });
        return relationships;
    }

    /// <summary>Strict and transitional types differ in everything but their last word.</summary>
    public static bool IsType(string uri, string word) => uri.EndsWith("/" + word, StringComparison.Ordinal);

    /// <summary>Type and part of a relationship; null if there is none of that id within the package.</summary>
    public (string Type, string Part)? Find(string id) => _byId.TryGetValue(id, out var found) ? found : null;

    /// <summary>The first part whose relationship's type ends with that word.</summary>
    public string? FirstOf(string type) =>
        _byId.Values.Where(relationship => IsType(relationship.Type, type)).Select(relationship => relationship.Part).FirstOrDefault();

    /// <summary>All parts whose relationship's type ends with that word.</summary>
    public IEnumerable<string> AllOf(string type) =>
        _byId.Values.Where(relationship => IsType(relationship.Type, type)).Select(relationship => relationship.Part);

    private void Add(XmlReader xml, string folder, int most)
    {
        var (id, type, target) = (xml.GetAttribute("Id"), xml.GetAttribute("Type"), xml.GetAttribute("Target"));
        if (id is null || type is null || target is null || xml.GetAttribute("TargetMode") == "External")
            return;
        if (_byId.Count == most)
            throw RefusalException.TooLarge(Excess.Relations, most);
        _byId.TryAdd(id, (type, Resolve(folder, target)));
    }

    private static string Resolve(string folder, string target)
    {
        var path = Uri.UnescapeDataString(target).Replace('\\', '/');
        var steps = new List<string>();
        foreach (var step in (path.StartsWith('/') ? path : folder + path).Split('/', StringSplitOptions.RemoveEmptyEntries))
        {
            if (step == ".." && steps.Count > 0)
                steps.RemoveAt(steps.Count - 1);
            else if (step is not ("." or ".."))
                steps.Add(step);
        }

        return string.Join('/', steps);
    }
}
