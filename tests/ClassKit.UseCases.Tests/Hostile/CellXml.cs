namespace ClassKit.UseCases.Tests.Hostile;

/// <summary>Cells in the XML of a sheet.</summary>
internal static class CellXml
{
    /// <summary>Puts another cell in a cell's place.</summary>
    /// <param name="xml">The sheet.</param>
    /// <param name="cell">Which cell; it must be there.</param>
    /// <param name="content">What stands behind its address: <c>&gt;&lt;v&gt;1&lt;/v&gt;</c>, or attributes before that.</param>
    /// <param name="prefix">What the names of elements begin with in the file.</param>
    public static string Put(string xml, string cell, string content, string prefix = "")
    {
        var (tag, end) = ($"<{prefix}c r=\"{cell}\"", $"</{prefix}c>");
        var from = xml.IndexOf(tag, StringComparison.Ordinal);
        var open = xml.IndexOf('>', from);
        var to = xml[open - 1] == '/' ? open + 1 : xml.IndexOf(end, from, StringComparison.Ordinal) + end.Length;
        return xml[..from] + tag + content + end + xml[to..];
    }
}
