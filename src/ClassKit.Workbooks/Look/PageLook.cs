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

    /// <summary>The size of all type but titles, in points.</summary>
    private const double Type = 11;

    /// <summary>What it comes to at a page's scale of 1, which is written in whole percent.</summary>
    private const double TypeOfOne = 0.11;

    /// <summary>The least that a sheet's type comes out at on paper, in points: smaller is not read at arm's length.</summary>
    private const double LeastType = 9.2;

    /// <summary>What large print asks for, in points: 16 to 18.</summary>
    private const double LargeType = 16.1;

    /// <summary>Programs differ by a percent or two in how wide they make a column and how high a row.</summary>
    private const double Spare = 0.97;

    /// <summary>What type may come down to where that spares a page with a few last rows, in points.</summary>
    private const double LeastTypeForRows = 8.7;

    private const double SideMargin = 1.3;
    private const double TopMargin = 2.0;
    private const double BottomMargin = 1.8;
    private const double DigitPixels = 7;
    private const double ColumnPadding = 5;

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
        // Head and foot stay readable on a sheet that is printed smaller.
        page.ScaleHFWithDocument = false;
        page.Margins.Left = page.Margins.Right = SideMargin / Inch;
        page.Margins.Top = TopMargin / Inch;
        page.Margins.Bottom = BottomMargin / Inch;
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

    /// <summary>
    /// What a page holds side by side, in characters of 11 points, before a sheet that is fitted to it comes out below
    /// <see cref="LeastType"/> points; for one sheet on either paper, the narrower.
    /// </summary>
    /// <param name="columns">Over how many columns they go.</param>
    public static double ReadableWidth(int columns) =>
        (Room(XLPageOrientation.Landscape, Paper.Letter) - columns * ColumnPadding) / DigitPixels;

    /// <summary>
    /// As many pages side by side as keep the type at <see cref="LeastType"/> points and more, of nearly equal width, the first columns on
    /// each; one page where all fits. A program that fits a sheet to a page's width would print it smaller without a word.
    /// </summary>
    /// <param name="sheet">A sheet that is set up for its page.</param>
    /// <param name="paper">What it is printed on; null for A4.</param>
    /// <param name="lastColumn">The last column that is printed.</param>
    /// <param name="lastRepeated">The last of the columns that stand on every page.</param>
    /// <param name="beginnings">The columns that a page may begin with, where others belong to what stands before them; null for all.</param>
    /// <returns>The last column of the first page.</returns>
    public static int SpreadOverPages(
        this IXLWorksheet sheet,
        Paper? paper,
        int lastColumn,
        int lastRepeated,
        IEnumerable<int>? beginnings = null
    )
    {
        var room = Room(sheet.PageSetup.PageOrientation, paper ?? Paper.A4);
        int[] starts =
        [
            .. (beginnings ?? Enumerable.Range(lastRepeated + 1, lastColumn - lastRepeated))
                .Where(column => column > lastRepeated && column <= lastColumn)
                .Append(lastRepeated + 1)
                .Distinct()
                .Order(),
        ];
        var groups = starts
            .Zip(starts.Skip(1).Append(lastColumn + 1), (from, next) => (From: from, To: next - 1, Width: Pixels(sheet, from, next - 1)))
            .ToList();
        var repeated = Pixels(sheet, 1, lastRepeated);
        sheet.PageSetup.SetColumnsToRepeatAtLeft(1, lastRepeated);
        if (Pages(groups, room - repeated).Count == 1)
        {
            // Pages downwards are left to the rows, unless a little smaller spares one.
            var fitted = Math.Min(Type, LeastType * room / (repeated + groups.Sum(group => group.Width)));
            if (sheet.PageSetup.RowBreaks.Count == 0 && fitted > LeastTypeForRows)
            {
                var (usual, fewer) = (PagesTall(sheet, paper ?? Paper.A4, fitted), PagesTall(sheet, paper ?? Paper.A4, LeastTypeForRows));
                sheet.PageSetup.PagesTall = fewer < usual ? fewer : 0;
            }
            return lastColumn;
        }

        // As few pages as can be, and on these as little as can be on the fullest.
        var fullest = room - repeated;
        var pages = Pages(groups, fullest);
        for (var less = fullest - DigitPixels; Pages(groups, less).Count == pages.Count && less > 0; less -= DigitPixels)
            (fullest, pages) = (less, Pages(groups, less));
        // Fixed, since breaks between columns do not count where a program fits the sheet to pages. Larger would cost pages downwards.
        var widest = pages.Max(page => repeated + Pixels(sheet, page.From, page.To));
        var type = LeastType * Math.Min(1, room / widest);
        var tall = PagesTall(sheet, paper ?? Paper.A4, type);
        while (
            type > LeastTypeForRows
            && PagesTall(sheet, paper ?? Paper.A4, LeastTypeForRows) < tall
            && PagesTall(sheet, paper ?? Paper.A4, type) == tall
        )
            type -= 0.05;
        sheet.PageSetup.Scale = (int)Math.Floor(type / TypeOfOne);
        foreach (var page in pages.Skip(1))
            sheet.PageSetup.AddVerticalPageBreak(page.From - 1);
        return pages[0].To;
    }

    /// <summary>As large as asked for large print, or as fits across the page where that is less: a fit to the page only ever makes smaller.</summary>
    /// <param name="sheet">A sheet that is set up for its page.</param>
    /// <param name="paper">What it is printed on; null for A4.</param>
    /// <param name="lastColumn">The last column that is printed.</param>
    /// <returns>What a page holds of rows, in points of the sheet.</returns>
    public static double PrintLarge(this IXLWorksheet sheet, Paper? paper, int lastColumn)
    {
        var room = Room(sheet.PageSetup.PageOrientation, paper ?? Paper.A4) * LeastType * Spare;
        var type = Math.Min(LargeType, room / Pixels(sheet, 1, lastColumn));
        sheet.PageSetup.Scale = (int)Math.Floor(type / TypeOfOne);
        return HeightOfPage(sheet, paper ?? Paper.A4, type);
    }

    /// <summary>A sheet on one page where its type stays at <see cref="LeastTypeForRows"/> points so, and else over as many as it takes.</summary>
    /// <param name="sheet">A sheet that is fitted to the width of a page.</param>
    /// <param name="paper">What it is printed on; null for A4.</param>
    /// <param name="height">What its rows take, in points of the sheet.</param>
    public static void PrintOnOnePage(this IXLWorksheet sheet, Paper? paper, double height)
    {
        if (height <= HeightOfPage(sheet, paper ?? Paper.A4, LeastTypeForRows))
            sheet.PageSetup.PagesTall = 1;
    }

    /// <summary>Page breaks, so that pieces stand whole on a page and as many on each as it holds.</summary>
    /// <param name="sheet">A sheet that is not fitted to pages.</param>
    /// <param name="pieces">The first row of each piece, and the row behind the last; the first begins a page.</param>
    /// <param name="page">What a page holds, in points of the sheet.</param>
    public static void KeepWhole(this IXLWorksheet sheet, IReadOnlyList<int> pieces, double page)
    {
        var used = 0.0;
        foreach (var (first, next) in pieces.Zip(pieces.Skip(1)))
        {
            var height = Height(sheet, first, next - 1);
            if (used > 0 && used + height > page)
            {
                sheet.PageSetup.AddHorizontalPageBreak(first - 1);
                used = 0;
            }
            used = (used + height) % page;
        }
    }

    /// <summary>What rows take together, in points.</summary>
    public static double Height(IXLWorksheet sheet, int from, int to) =>
        Enumerable.Range(from, to - from + 1).Sum(row => sheet.Row(row).Height);

    /// <summary>A text over several cells of a row, broken within them: in print nothing runs on over the page's edge.</summary>
    public static IXLCell Across(this IXLWorksheet sheet, int row, int from, int to, string text)
    {
        var cell = sheet.Cell(row, from).SetText(text).Wrapped();
        if (to > from)
            sheet.Range(row, from, row, to).Merge();
        var width = Enumerable.Range(from, to - from + 1).Sum(column => sheet.Column(column).Width);
        sheet.Row(row).Height = Math.Max(20, TextHeight.Of(text, width));
        return cell;
    }

    /// <summary>Groups of columns page by page, each as full as it can be; one that is wider than a page has a page of its own.</summary>
    private static List<(int From, int To)> Pages(List<(int From, int To, double Width)> groups, double room)
    {
        List<(int From, int To, double Width)> pages = [];
        foreach (var group in groups)
        {
            if (pages.Count > 0 && pages[^1].Width + group.Width <= room)
                pages[^1] = (pages[^1].From, group.To, pages[^1].Width + group.Width);
            else
                pages.Add(group);
        }
        return [.. pages.Select(page => (page.From, page.To))];
    }

    /// <summary>The width between the margins at the scale that makes 11 points the least type, in pixels of a 96th of an inch.</summary>
    private static double Room(XLPageOrientation orientation, Paper paper)
    {
        var (width, height) = Size(paper);
        return ((orientation == XLPageOrientation.Landscape ? height : width) - 2 * SideMargin) / Inch * 96 / LeastType * Type * Spare;
    }

    /// <summary>How many pages the rows of the printed part take below one another.</summary>
    private static int PagesTall(IXLWorksheet sheet, Paper paper, double type)
    {
        var page = HeightOfPage(sheet, paper, type);
        var rows = sheet.PageSetup.PrintAreas.First().RowCount();
        var head = sheet.PageSetup.FirstRowToRepeatAtTop;
        var repeated = head == 0 ? 0 : Height(sheet, head, sheet.PageSetup.LastRowToRepeatAtTop);
        var (pages, used) = (1, 0.0);
        for (var row = 1; row <= rows; row++)
        {
            if (used + sheet.Row(row).Height > page)
                (pages, used) = (pages + 1, repeated);
            used += sheet.Row(row).Height;
        }
        return pages;
    }

    /// <summary>What a page holds of rows at a size of type, in points of the sheet.</summary>
    private static double HeightOfPage(IXLWorksheet sheet, Paper paper, double type)
    {
        var (width, height) = Size(paper);
        var side = sheet.PageSetup.PageOrientation == XLPageOrientation.Landscape ? width : height;
        return (side - TopMargin - BottomMargin) / Inch * 72 / type * Type * Spare;
    }

    /// <summary>ISO 216 and ANSI/ASME Y14.1, in centimetres.</summary>
    private static (double Width, double Height) Size(Paper paper) =>
        paper switch
        {
            Paper.A4 => (21.0, 29.7),
            Paper.Letter => (21.59, 27.94),
        };

    /// <summary>What columns take at their full size: ECMA-376-1 18.3.1.13, for a face whose digits are 7 pixels wide, such as Calibri.</summary>
    private static double Pixels(IXLWorksheet sheet, int from, int to) =>
        Enumerable.Range(from, to - from + 1).Sum(column => sheet.Column(column).Width * DigitPixels + ColumnPadding);

    /// <summary>In a header, <c>&amp;</c> starts a code, and a text that starts with digits would run into the code before it.</summary>
    private static string Literal(string text) => " " + Doubled(text);

    /// <summary>A text as it stands in a header.</summary>
    internal static string Doubled(string text) => text.Replace("&", "&&", StringComparison.Ordinal);
}
