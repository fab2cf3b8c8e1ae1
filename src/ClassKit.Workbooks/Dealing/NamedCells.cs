using System.Globalization;
using ClassKit.CellFormulas.Sheets;
using ClosedXML.Excel;

namespace ClassKit.Workbooks.Dealing;

/// <summary>Names that the whole workbook knows.</summary>
internal static class NamedCells
{
    /// <summary>Names one cell by an absolute reference.</summary>
    public static void NameCell(this IXLWorkbook workbook, string name, CellAddress address) =>
        workbook.NamedRanges.Add(name, Reference(address));

    private static string Reference(CellAddress address) =>
        string.Create(
            CultureInfo.InvariantCulture,
            $"'{address.Sheet.Replace("'", "''", StringComparison.Ordinal)}'!${CellAddress.ColumnLetters(address.Column)}${address.Row}"
        );
}
