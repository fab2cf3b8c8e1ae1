using ClassKit.CellFormulas.Sheets;

namespace ClassKit.Grading.Finding;

/// <summary>Defined names that stand for one cell.</summary>
internal static class CellReference
{
    /// <summary>
    /// The cells that workbook-wide names stand for, in any letter case; null for one that is gone, broken or more than one cell.
    /// </summary>
    public static Dictionary<string, CellAddress?> OfNames(WorkbookSnapshot workbook)
    {
        var cells = new Dictionary<string, CellAddress?>(workbook.Names.Count, StringComparer.OrdinalIgnoreCase);
        foreach (var name in workbook.Names.Where(name => name.Sheet is null))
            cells.TryAdd(name.Name, Of(name.Formula) is { } address && workbook.FindSheet(address.Sheet) is not null ? address : null);
        return cells;
    }

    /// <summary>Reads <c>'Sheet one'!$B$5</c>; null for anything else, such as <c>#REF!</c>.</summary>
    public static CellAddress? Of(string reference)
    {
        // LibreOffice writes a sheet into names with a $ before it, which ECMA-376 has no use for.
        var text = reference.TrimStart('=', '$');
        var mark = text.LastIndexOf('!');
        if (mark <= 0)
            return null;
        var sheet = text[..mark];
        if (sheet is ['\'', .., '\''])
            sheet = sheet[1..^1].Replace("''", "'", StringComparison.Ordinal);
        return CellAddress.TryParse(sheet, text.AsSpan(mark + 1), out var address) ? address : null;
    }
}
