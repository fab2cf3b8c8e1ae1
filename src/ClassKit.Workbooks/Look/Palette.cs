using ClosedXML.Excel;

namespace ClassKit.Workbooks.Look;

/// <summary>
/// The colours of all workbooks: those of pages, as the stylesheet names them. Contrast of every text on its ground is at least 4.5 to 1
/// (WCAG 2.2, 1.4.3); no meaning is told by colour alone.
/// </summary>
internal static class Palette
{
    /// <summary>Text.</summary>
    public static readonly XLColor Ink = XLColor.FromHtml("#1F2A2E");

    /// <summary>Text of less weight: 6.8 to 1 on white.</summary>
    public static readonly XLColor Quiet = XLColor.FromHtml("#525D61");

    /// <summary>The title band, with white text: 7.9 to 1.</summary>
    public static readonly XLColor Band = XLColor.FromHtml("#1B5A5F");

    /// <summary>Headings and the line under them.</summary>
    public static readonly XLColor Crust = XLColor.FromHtml("#8A5A1C");

    /// <summary>The ground of givens and of table heads.</summary>
    public static readonly XLColor Crumb = XLColor.FromHtml("#F3F0E7");

    /// <summary>The line around givens and in tables.</summary>
    public static readonly XLColor Line = XLColor.FromHtml("#DCD7C9");

    /// <summary>The frame of cells that a student fills.</summary>
    public static readonly XLColor Answer = XLColor.FromHtml("#2A5192");

    /// <summary>The ground of cells that a student fills.</summary>
    public static readonly XLColor AnswerGround = XLColor.FromHtml("#E9EFF9");

    /// <summary>The ground of marked rows and cells, always beside a word.</summary>
    public static readonly XLColor Attention = XLColor.FromHtml("#F9F0DF");
}
