using ClassKit.Exercises.Cohorts;
using ClosedXML.Excel;

namespace ClassKit.Workbooks.Look;

/// <summary>
/// How sheets print: one page wide, on the class's paper or on A4, inside the margins that both A4 and Letter printers keep.
/// </summary>
internal static class PageLook
{
    /// <summary>Centimetres to inches, which page margins are given in.</summary>
    private const double Inch = 2.54;

    /// <summary>
    /// Percent of the size on paper that a sheet is shown at: letters of 11 points as large as 18 and more for large print.
    /// </summary>
    public static int Zoom(bool largePrint) => largePrint ? 180 : 110;

    public static void SetUpPage(
        this IXLWorksheet sheet,
        IXLRange area,
        XLPageOrientation orientation,
        Paper? paper,
        string left,
        string right,
        string foot = ""
    )
    {
        var page = sheet.PageSetup;
        page.PaperSize = paper switch
        {
            Paper.Letter => XLPaperSize.LetterPaper,
            Paper.A4 or null => XLPaperSize.A4Paper,
        };
        page.PageOrientation = orientation;
        page.PagesWide = 1;
        page.PagesTall = 0;
        page.CenterHorizontally = true;
        page.Margins.Left = page.Margins.Right = 1.3 / Inch;
        page.Margins.Top = 2.0 / Inch;
        page.Margins.Bottom = 1.8 / Inch;
        page.Margins.Header = page.Margins.Footer = 0.9 / Inch;
        page.PrintAreas.Clear();
        var (first, last) = (area.RangeAddress.FirstAddress, area.RangeAddress.LastAddress);
        // By numbers: an area in letters goes through patterns that the library compiles when they are first asked.
        page.PrintAreas.Add(first.RowNumber, first.ColumnNumber, last.RowNumber, last.ColumnNumber);
        page.Header.Left.AddText(Literal(left));
        page.Header.Right.AddText(Literal(right));
        page.Footer.Left.AddText(XLHFPredefinedText.SheetName);
        if (foot.Length > 0)
            page.Footer.Center.AddText(Literal(foot));
        page.Footer.Right.AddText("Page ");
        page.Footer.Right.AddText(XLHFPredefinedText.PageNumber);
        page.Footer.Right.AddText(" of ");
        page.Footer.Right.AddText(XLHFPredefinedText.NumberOfPages);
    }

    /// <summary>As many pages side by side as keep it readable, the first columns on each.</summary>
    /// <param name="sheet">A sheet that is set up for its page.</param>
    /// <param name="lastColumn">The last column that is printed.</param>
    /// <param name="charactersOfAPage">So many characters of 11 points side by side on one page: about 140 fill A4 on its side, more make
    /// all smaller.</param>
    /// <param name="lastRepeated">The last of the columns that stand on every page.</param>
    public static void SpreadOverPages(this IXLWorksheet sheet, int lastColumn, double charactersOfAPage, int lastRepeated)
    {
        sheet.PageSetup.PagesWide =
            1 + (int)(Enumerable.Range(1, lastColumn).Sum(column => sheet.Column(column).Width) / charactersOfAPage);
        sheet.PageSetup.SetColumnsToRepeatAtLeft(1, lastRepeated);
    }

    /// <summary>In a header, <c>&amp;</c> starts a code, and a text that starts with digits would run into the code before it.</summary>
    private static string Literal(string text) => " " + Doubled(text);

    /// <summary>A text as it stands in a header.</summary>
    internal static string Doubled(string text) => text.Replace("&", "&&", StringComparison.Ordinal);
}
