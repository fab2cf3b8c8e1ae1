using ClassKit.CellFormulas.Sheets;
using ClassKit.CellFormulas.Values;

namespace ClassKit.CellFormulas.Tests.Differential;

/// <summary>What an independent spreadsheet program computes.</summary>
internal static class LibreOfficeValues
{
    /// <summary>The values of all cells of a workbook, computed there.</summary>
    public static Dictionary<CellAddress, CellValue> Of(WorkbookSnapshot workbook) =>
        XlsxFile.ReadValues(LibreOffice.SaveAgain(XlsxFile.Write(workbook)));
}
