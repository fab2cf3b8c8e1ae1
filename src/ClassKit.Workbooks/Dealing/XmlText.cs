using ClassKit.Workbooks.Look;

namespace ClassKit.Workbooks.Dealing;

/// <summary>Text as it stands between the tags of an XML part.</summary>
internal static class XmlText
{
    /// <summary>What a cell would hold of the text, with the signs escaped that mean something in XML.</summary>
    public static string Escaped(string text) =>
        CellText
            .Storable(text)
            .Replace("&", "&amp;", StringComparison.Ordinal)
            .Replace("<", "&lt;", StringComparison.Ordinal)
            .Replace(">", "&gt;", StringComparison.Ordinal)
            .Replace("\r", "&#xD;", StringComparison.Ordinal);
}
