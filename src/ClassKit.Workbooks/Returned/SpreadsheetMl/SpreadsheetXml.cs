using System.Text;
using System.Xml;
using ClassKit.Workbooks.Returned.Packages;

namespace ClassKit.Workbooks.Returned.SpreadsheetMl;

/// <summary>The vocabulary of SpreadsheetML in both of its namespaces, transitional and strict (ECMA-376 Parts 1 and 4).</summary>
internal static class SpreadsheetXml
{
    private const string Transitional = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
    private const string Strict = "http://purl.oclc.org/ooxml/spreadsheetml/main";
    private const string TransitionalRelationships = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
    private const string StrictRelationships = "http://purl.oclc.org/ooxml/officeDocument/relationships";

    /// <summary>True if the reader stands on the start of that element.</summary>
    public static bool IsAt(this XmlReader xml, string element) =>
        xml.NodeType == XmlNodeType.Element && xml.LocalName == element && xml.NamespaceURI is Transitional or Strict;

    /// <summary>The <c>r:id</c> attribute.</summary>
    public static string? RelationshipId(this XmlReader xml) =>
        xml.GetAttribute("id", TransitionalRelationships) ?? xml.GetAttribute("id", StrictRelationships);

    /// <summary>An xsd:boolean attribute; absent is false.</summary>
    public static bool Flag(this XmlReader xml, string attribute) => xml.GetAttribute(attribute) is "1" or "true";

    /// <summary>The text directly inside the element that the reader stands on, which it then leaves at its end.</summary>
    /// <remarks>Programs escape what XML cannot hold as <c>_x000D_</c> (ECMA-376 Part 1, 22.9.2.19).</remarks>
    public static string ReadText(this XmlReader xml)
    {
        if (xml.IsEmptyElement)
            return "";
        var depth = xml.Depth;
        string? only = null;
        StringBuilder? joined = null;
        while (xml.Next() && xml.Depth > depth)
        {
            if (
                xml.Depth != depth + 1
                || xml.NodeType
                    is not (XmlNodeType.Text or XmlNodeType.CDATA or XmlNodeType.Whitespace or XmlNodeType.SignificantWhitespace)
            )
                continue;
            if (only is null && joined is null && xml.NodeType != XmlNodeType.CDATA)
                only = xml.Value;
            else
                (joined ??= new StringBuilder(only)).AppendValue(xml);
        }

        var text = joined?.ToString() ?? only ?? "";
        return text.Contains("_x", StringComparison.Ordinal) ? XmlConvert.DecodeName(text) : text;
    }

    /// <summary>The text of a string item: plain, or in runs of different looks; readings printed above characters are left out.</summary>
    public static string ReadStringItem(this XmlReader xml)
    {
        if (xml.IsEmptyElement)
            return "";
        var depth = xml.Depth;
        string? only = null;
        StringBuilder? joined = null;
        while (xml.Next() && xml.Depth > depth)
        {
            if (xml.IsAt("rPh"))
            {
                SkipInside(xml);
                continue;
            }

            if (!xml.IsAt("t"))
                continue;
            var text = xml.ReadText();
            if (only is null)
                only = text;
            else
                (joined ??= new StringBuilder(only)).AppendBounded(text);
        }

        return joined?.ToString() ?? only ?? "";
    }

    /// <summary>Moves to the end of the element that the reader stands on.</summary>
    private static void SkipInside(XmlReader xml)
    {
        if (xml.IsEmptyElement)
            return;
        var depth = xml.Depth;
        while (xml.Next() && xml.Depth > depth) { }
    }
}
