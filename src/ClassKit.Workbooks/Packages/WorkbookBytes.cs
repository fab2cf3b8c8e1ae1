using ClosedXML.Excel;

namespace ClassKit.Workbooks;

/// <summary>Saves a workbook into memory, the same bytes for the same content.</summary>
internal static class WorkbookBytes
{
    public static byte[] ToBytes(this XLWorkbook workbook)
    {
        using var stream = new MemoryStream();
        // The calculation chain is optional (ECMA-376 Part 1, 12.3.1), and one that lags behind the formulas spoils a file.
        workbook.SaveAs(stream, new SaveOptions { GenerateCalculationChain = false });
        return PackageNormalizer.Normalize(stream.ToArray());
    }
}
