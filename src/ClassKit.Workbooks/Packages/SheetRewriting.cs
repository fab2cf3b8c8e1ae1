using System.Xml;
using System.Xml.Linq;

namespace ClassKit.Workbooks.Packages;

/// <summary>
/// Copies the part of a sheet and changes some of its elements on the way: a large class's sheet would not fit into memory as a document.
/// </summary>
internal static class SheetRewriting
{
    private static readonly XNamespace Main = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";

    /// <summary>The part with its columns and cells changed.</summary>
    /// <param name="part">A sheet that this program made itself.</param>
    /// <param name="columns">Changes the list of columns.</param>
    /// <param name="cell">Changes a cell.</param>
    public static byte[] Rewrite(byte[] part, Action<XElement> columns, Action<XElement> cell)
    {
        using var rewritten = new MemoryStream(part.Length);
        using (var from = XmlReader.Create(new MemoryStream(part)))
        using (var to = XmlWriter.Create(rewritten, PartXml.Settings))
        {
            from.Read();
            while (!from.EOF)
            {
                var change =
                    from.NodeType == XmlNodeType.Element && from.NamespaceURI == Main
                        ? from.LocalName switch
                        {
                            "c" => cell,
                            "cols" => columns,
                            _ => null,
                        }
                        : null;
                if (change is not null)
                {
                    var element = (XElement)XNode.ReadFrom(from);
                    change(element);
                    element.WriteTo(to);
                }
                else
                {
                    Copy(from, to);
                    from.Read();
                }
            }
        }

        return rewritten.ToArray();
    }

    /// <summary>Copies the node that the reader stands on, not what is in it.</summary>
    private static void Copy(XmlReader from, XmlWriter to)
    {
        switch (from.NodeType)
        {
            case XmlNodeType.Element:
                to.WriteStartElement(from.Prefix, from.LocalName, from.NamespaceURI);
                to.WriteAttributes(from, defattr: false);
                if (from.IsEmptyElement)
                    to.WriteEndElement();
                break;
            case XmlNodeType.EndElement:
                to.WriteFullEndElement();
                break;
            case XmlNodeType.Text or XmlNodeType.Whitespace or XmlNodeType.SignificantWhitespace:
                to.WriteString(from.Value);
                break;
        }
    }
}
