using System.Text;
using System.Xml;
using ClassKit.Workbooks.Returned.Packages;

namespace ClassKit.Workbooks.Returned.OpenDocument;

/// <summary>The vocabulary of OpenDocument spreadsheets (ISO/IEC 26300, OpenDocument 1.3 Part 3).</summary>
internal static class OpenDocumentXml
{
    public const string Table = "urn:oasis:names:tc:opendocument:xmlns:table:1.0";
    public const string Office = "urn:oasis:names:tc:opendocument:xmlns:office:1.0";

    /// <summary>LibreOffice's own, in which a cell's type may be an error too.</summary>
    public const string Finer = "urn:org:documentfoundation:names:experimental:calc:xmlns:calcext:1.0";

    public const string Text = "urn:oasis:names:tc:opendocument:xmlns:text:1.0";

    /// <summary>True if the reader stands on the start of that element.</summary>
    public static bool IsAt(this XmlReader xml, string space, string element) =>
        xml.NodeType == XmlNodeType.Element && xml.LocalName == element && xml.NamespaceURI == space;

    /// <summary>
    /// The text of a cell that the reader stands in or on: its paragraphs, with notes left out. The reader leaves at the cell's end.
    /// </summary>
    public static string? ReadParagraphs(this XmlReader xml)
    {
        if (xml.IsEmptyElement)
            return null;
        var depth = xml.Depth;
        StringBuilder? text = null;
        var isOwn = false;
        while (xml.Next() && xml.Depth > depth)
        {
            // A comment has paragraphs of its own, and so has a drawing.
            if (xml.NodeType == XmlNodeType.Element && xml.Depth == depth + 1)
                isOwn = xml.NamespaceURI == Text;
            if (!isOwn)
                continue;
            if (xml.IsAt(Text, "p"))
                text = text is null ? new() : text.AppendBounded("\n");
            else if (xml.IsAt(Text, "s"))
                text?.AppendBounded(
                    new string(' ', int.TryParse(xml.GetAttribute("c", Text), out var spaces) ? Math.Clamp(spaces, 1, 1000) : 1)
                );
            else if (xml.IsAt(Text, "tab"))
                text?.AppendBounded("\t");
            else if (xml.NodeType is XmlNodeType.Text or XmlNodeType.CDATA or XmlNodeType.SignificantWhitespace)
                text?.AppendValue(xml);
        }

        return text?.ToString();
    }
}
