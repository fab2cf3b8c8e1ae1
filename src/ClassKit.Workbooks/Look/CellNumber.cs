using System.Globalization;
using ClosedXML.Excel;

namespace ClassKit.Workbooks.Look;

/// <summary>Puts decimals into cells as numbers.</summary>
internal static class CellNumber
{
    /// <summary>Hundredths of a percent are read as they are.</summary>
    private const int ShortDecimals = 4;

    private const decimal AsGoodAsNone = 1e-15m;

    /// <summary>
    /// Writes a number of points or a share. ClosedXML writes a decimal in the culture of the machine, a double in that of files.
    /// </summary>
    public static IXLCell SetNumber(this IXLCell cell, decimal number) => cell.SetValue((double)number);

    /// <summary>The most that what a share is of is looked for: points of a work, students of a class.</summary>
    private const int MostParts = 1000;

    /// <summary>
    /// Writes a share so that a person can read it and nothing of it is lost: a third as =1/3 and not as a row of threes, whose last digit
    /// decides where a line must be passed.
    /// </summary>
    public static IXLCell SetShare(this IXLCell cell, decimal share)
    {
        if (decimal.Round(share, ShortDecimals) == share)
            return cell.SetNumber(share);
        for (var parts = 2; parts <= MostParts; parts++)
        {
            var taken = decimal.Round(share * parts);
            if (Math.Abs(taken / parts - share) < AsGoodAsNone)
                return cell.SetFormulaA1(string.Create(CultureInfo.InvariantCulture, $"{taken:0}/{parts}"));
        }
        return cell.SetNumber(share);
    }

    /// <summary>Writes a number rounded to what is meant by it: noise of a computation is seen by whoever clicks the cell.</summary>
    public static IXLCell SetRounded(this IXLCell cell, double number, int decimals) => cell.SetValue(Rounded(number, decimals));

    /// <summary>A number as it is written into a cell or a formula.</summary>
    public static double Rounded(double number, int decimals) => Math.Round(number, decimals, MidpointRounding.AwayFromZero);
}
