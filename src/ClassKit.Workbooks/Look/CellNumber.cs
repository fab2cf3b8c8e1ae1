using ClosedXML.Excel;

namespace ClassKit.Workbooks.Look;

/// <summary>Puts decimals into cells as numbers.</summary>
internal static class CellNumber
{
    /// <summary>
    /// Writes a number of points or a share. ClosedXML writes a decimal in the culture of the machine, a double in that of files.
    /// </summary>
    public static IXLCell SetNumber(this IXLCell cell, decimal number) => cell.SetValue((double)number);
}
