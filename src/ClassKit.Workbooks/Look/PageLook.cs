using ClassKit.Exercises.Cohorts;
using ClosedXML.Excel;

namespace ClassKit.Workbooks.Look;

/// <summary>How sheets print: one page wide, on the class's paper or on A4, inside the margins that both A4 and Letter printers keep.</summary>
internal static class PageLook
{
    /// <summary>Centimetres to inches, which page margins are given in.</summary>
    private const double Inch = 2.54;

    /// <summary>Percent of the size on paper that a sheet is shown at: letters of 11 points as large as 18 and more for large print.</summary>
    public static int Zoom(bool largePrint) => largePrint ? 180 : 110;

    public static void SetUpPage(this IXLWorksheet sheet, IXLRange area, XLPageOrientation orientation, Paper? paper, string left, string right, string foot = "")
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
        if (foot.Length > 0) page.Footer.Center.AddText(Literal(foot));
        page.Footer.Right.AddText("Page ");
        page.Footer.Right.AddText(XLHFPredefinedText.PageNumber);
        page.Footer.Right.AddText(" of ");
        page.Footer.Right.AddText(XLHFPredefinedText.NumberOfPages);
    }

    /// <summary>In a header, <c>&amp;</c> starts a code, and a text that starts with digits would run into the code before it.</summary>
    private static string Literal(string text) => " " + Doubled(text);

    /// <summary>A text as it stands in a header.</summary>
    internal static string Doubled(string text) => text.Replace("&", "&&", StringComparison.Ordinal);
}
