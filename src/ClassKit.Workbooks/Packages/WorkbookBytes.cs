using ClosedXML.Excel;

namespace ClassKit.Workbooks.Packages;

/// <summary>Saves a workbook into memory, the same bytes for the same content.</summary>
internal static class WorkbookBytes
{
    public static byte[] ToBytes(this XLWorkbook workbook) => PackageNormalizer.Normalize(workbook.Saved());

    /// <summary>The same with what every formula comes to stored beside it.</summary>
    public static byte[] ToBytesWithValues(this XLWorkbook workbook) => PackageNormalizer.NormalizeWithValues(workbook.Saved());

    /// <summary>
    /// The bytes as the library that saves has them: to be normalized once the workbook itself, which is far larger, is not needed any
    /// more.
    /// </summary>
    public static byte[] Saved(this XLWorkbook workbook)
    {
        using var stream = new MemoryStream();
        // The calculation chain is optional (ECMA-376 Part 1, 12.3.1), and one that lags behind the formulas spoils a file.
        workbook.SaveAs(stream, new SaveOptions { GenerateCalculationChain = false });
        return stream.ToArray();
    }
}
