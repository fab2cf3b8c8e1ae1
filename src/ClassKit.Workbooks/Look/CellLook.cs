using ClosedXML.Excel;

namespace ClassKit.Workbooks.Look;

/// <summary>The looks of cells, each named after what the cell is for.</summary>
internal static class CellLook
{
    public const string Font = "Calibri";

    /// <summary>A white sheet without grid lines, in our ink.</summary>
    public static void AsPage(this IXLWorksheet sheet)
    {
        sheet.ShowGridLines = false;
        sheet.Style.Font.FontName = Font;
        sheet.Style.Font.FontSize = 11;
        sheet.Style.Font.FontColor = Palette.Ink;
        sheet.Style.Alignment.Vertical = XLAlignmentVerticalValues.Center;
    }

    /// <summary>The dark band at the top.</summary>
    public static void AsTitle(this IXLRange band)
    {
        band.Style.Fill.BackgroundColor = Palette.Band;
        band.Style.Font.FontColor = XLColor.White;
        band.Style.Font.FontSize = 18;
        band.Style.Font.Bold = true;
        band.FirstRow().WorksheetRow().Height = 32;
    }

    /// <summary>A section's heading with a line under it.</summary>
    public static void AsHeading(this IXLRange row)
    {
        row.Style.Font.Bold = true;
        row.Style.Font.FontColor = Palette.Crust;
        row.Style.Border.BottomBorder = XLBorderStyleValues.Medium;
        row.Style.Border.BottomBorderColor = Palette.Crust;
        row.FirstRow().WorksheetRow().Height = 20;
    }

    /// <summary>Text that explains.</summary>
    public static IXLCell AsQuiet(this IXLCell cell)
    {
        cell.Style.Font.FontColor = Palette.Quiet;
        return cell;
    }

    /// <summary>Text that breaks within its cell.</summary>
    public static IXLCell Wrapped(this IXLCell cell)
    {
        cell.Style.Alignment.WrapText = true;
        return cell;
    }

    /// <summary>A small tag that names a row.</summary>
    public static void AsTag(this IXLCell cell)
    {
        cell.Style.Font.Bold = true;
        cell.Style.Font.FontColor = Palette.Crust;
        cell.Style.Alignment.Horizontal = XLAlignmentHorizontalValues.Center;
    }

    /// <summary>A value that the student is told and must leave: a thin line on a crumb-coloured ground.</summary>
    public static void AsGiven(this IXLCell cell)
    {
        cell.Style.Fill.BackgroundColor = Palette.Crumb;
        cell.Style.Border.OutsideBorder = XLBorderStyleValues.Thin;
        cell.Style.Border.OutsideBorderColor = Palette.Line;
        cell.Style.Alignment.Horizontal = XLAlignmentHorizontalValues.Right;
        cell.Style.Alignment.Indent = 1;
    }

    /// <summary>A cell that the student fills: unlocked, in a thick frame.</summary>
    public static void AsAnswer(this IXLCell cell)
    {
        cell.Style.Protection.Locked = false;
        cell.Style.Fill.BackgroundColor = Palette.AnswerGround;
        cell.Style.Border.OutsideBorder = XLBorderStyleValues.Medium;
        cell.Style.Border.OutsideBorderColor = Palette.Answer;
        cell.Style.Alignment.Horizontal = XLAlignmentHorizontalValues.Right;
        cell.Style.Alignment.Indent = 1;
        cell.Style.Font.Bold = true;
    }

    /// <summary>A cell of a table that may be changed: unlocked, in a thin frame.</summary>
    public static void AsEntry(this IXLCell cell)
    {
        cell.Style.Protection.Locked = false;
        cell.Style.Fill.BackgroundColor = Palette.AnswerGround;
        cell.Style.Border.OutsideBorder = XLBorderStyleValues.Thin;
        cell.Style.Border.OutsideBorderColor = Palette.Answer;
    }

    /// <summary>Cells for the student's own working: unlocked, on dotted lines.</summary>
    public static void AsScratch(this IXLRange range)
    {
        range.Style.Protection.Locked = false;
        range.Style.Border.InsideBorder = XLBorderStyleValues.Hair;
        range.Style.Border.InsideBorderColor = Palette.Line;
        range.Style.Border.OutsideBorder = XLBorderStyleValues.Dashed;
        range.Style.Border.OutsideBorderColor = Palette.Quiet;
    }

    /// <summary>The head of a table.</summary>
    public static void AsTableHead(this IXLRange head)
    {
        head.Style.Fill.BackgroundColor = Palette.Crumb;
        head.Style.Font.Bold = true;
        head.Style.Font.FontColor = Palette.Crust;
        head.LastRow().Style.Border.BottomBorder = XLBorderStyleValues.Medium;
        head.LastRow().Style.Border.BottomBorderColor = Palette.Crust;
    }

    /// <summary>A row of a table, with a fine line under it.</summary>
    public static void AsTableRow(this IXLRange row)
    {
        row.Style.Border.BottomBorder = XLBorderStyleValues.Hair;
        row.Style.Border.BottomBorderColor = Palette.Line;
    }

    /// <summary>Points that are not the grader's: a frame, which print without colour shows too.</summary>
    public static void AsCorrected(this IXLCell cell)
    {
        cell.Style.Border.OutsideBorder = XLBorderStyleValues.Medium;
        cell.Style.Border.OutsideBorderColor = Palette.Ink;
        cell.Style.Font.Bold = true;
    }

    /// <summary>A cell whose word asks for attention.</summary>
    public static IXLCell AsAttention(this IXLCell cell)
    {
        cell.Style.Fill.BackgroundColor = Palette.Attention;
        cell.Style.Font.Bold = true;
        return cell;
    }
}
