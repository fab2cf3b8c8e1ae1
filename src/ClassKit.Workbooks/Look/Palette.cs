using ClosedXML.Excel;

namespace ClassKit.Workbooks.Look;

/// <summary>The colours of all workbooks. Contrast of every text on its ground is at least 4.5 to 1 (WCAG 2.2, 1.4.3); no meaning is told by colour alone.</summary>
internal static class Palette
{
    /// <summary>Text.</summary>
    public static readonly XLColor Ink = XLColor.FromHtml("#1E2A32");

    /// <summary>Text of less weight: 7.0 to 1 on white.</summary>
    public static readonly XLColor Quiet = XLColor.FromHtml("#4F5B63");

    /// <summary>The title band, with white text: 11 to 1.</summary>
    public static readonly XLColor Band = XLColor.FromHtml("#4A2F1D");

    /// <summary>Headings and the line under them.</summary>
    public static readonly XLColor Crust = XLColor.FromHtml("#8A4B12");

    /// <summary>The ground of givens and of table heads.</summary>
    public static readonly XLColor Crumb = XLColor.FromHtml("#F6EEDF");

    /// <summary>The line around givens and in tables.</summary>
    public static readonly XLColor Line = XLColor.FromHtml("#CDBFA8");

    /// <summary>The frame of cells that a student fills.</summary>
    public static readonly XLColor Answer = XLColor.FromHtml("#1F5FA8");

    /// <summary>The ground of cells that a student fills.</summary>
    public static readonly XLColor AnswerGround = XLColor.FromHtml("#F2F7FD");

    /// <summary>The ground of marked rows and cells, always beside a word.</summary>
    public static readonly XLColor Attention = XLColor.FromHtml("#FBE3D6");
}
