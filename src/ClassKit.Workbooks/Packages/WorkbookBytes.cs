using ClosedXML.Excel;

namespace ClassKit.Workbooks;

/// <summary>Saves a workbook into memory, the same bytes for the same content.</summary>
internal static class WorkbookBytes
{
    /// <param name="workbook">What to save.</param>
    /// <param name="withValues">True to store what every formula comes to, for programs that show a workbook without calculating it.</param>
    public static byte[] ToBytes(this XLWorkbook workbook, bool withValues = false)
    {
        // The calculation chain is optional (ECMA-376 Part 1, 12.3.1), and one that lags behind the formulas spoils a file.
        using var stream = new MemoryStream();
        workbook.SaveAs(stream, new SaveOptions { EvaluateFormulasBeforeSaving = withValues, GenerateCalculationChain = false });
        return PackageNormalizer.Normalize(stream.ToArray());
    }
}
