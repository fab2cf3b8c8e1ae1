using System.Xml;
using ClassKit.CellFormulas.Sheets;
using ClassKit.Workbooks.Returned.Packages;

namespace ClassKit.Workbooks.Returned.SpreadsheetMl;

/// <summary>Reads a table: where it lies and what its columns are called (ECMA-376 Part 1, 18.5.1).</summary>
internal static class TablePart
{
    /// <summary>The table; null for one that does not say where it lies.</summary>
    /// <param name="package">The package.</param>
    /// <param name="part">The table's part.</param>
    /// <param name="sheet">The sheet that it lies on.</param>
    /// <param name="budget">Counts the names of columns.</param>
    /// <param name="filtered">Called with the rows that a filter of the table is on for.</param>
    public static TableSnapshot? Read(Package package, string part, string sheet, ReadBudget budget, Action<(int First, int Last)> filtered)
    {
        TableSnapshot? table = null;
        var columns = new List<string>();
        XmlPart.TryRead(package, part, xml =>
        {
            while (xml.Next())
            {
                if (xml.IsAt("table"))
                    table = Head(xml, sheet, columns);
                else if (xml.IsAt("tableColumn") && columns.Count < CellAddress.LastColumn)
                    columns.Add(budget.CountText(XmlConvert.DecodeName(xml.GetAttribute("name") ?? "")));
                else if (xml.IsAt("filterColumn") && table is not null)
                    filtered((table.Top + 1, table.Bottom));
            }
        });
        return table is not null && columns.Count > 0 && table.Left + columns.Count - 1 <= CellAddress.LastColumn ? table : null;
    }

    private static TableSnapshot? Head(XmlReader xml, string sheet, List<string> columns)
    {
        var (name, range) = (xml.GetAttribute("displayName") ?? xml.GetAttribute("name"), xml.GetAttribute("ref"));
        var colon = range?.IndexOf(':', StringComparison.Ordinal) ?? -1;
        if (name is null || colon < 0)
            return null;
        if (
            !CellAddress.TryParse(sheet, range.AsSpan(0, colon), out var first)
            || !CellAddress.TryParse(sheet, range.AsSpan(colon + 1), out var last)
        )
            return null;
        if (first.Row > last.Row || first.Column > last.Column)
            return null;
        var (headers, totals) = (xml.GetAttribute("headerRowCount") != "0", xml.GetAttribute("totalsRowCount") is not (null or "0"));
        return new(name, sheet, first.Row, first.Column, last.Row, headers, totals, columns);
    }
}
