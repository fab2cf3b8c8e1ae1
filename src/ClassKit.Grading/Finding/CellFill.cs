using ClassKit.CellFormulas.Sheets;

namespace ClassKit.Grading.Finding;

/// <summary>Whether something stands in a cell, and where it stands if the cell was merged with others.</summary>
internal static class CellFill
{
    /// <summary>True for a formula, or a value that is more than spaces.</summary>
    public static bool IsFilled(WorkbookSnapshot workbook, CellAddress cell) => IsFilled(workbook.Find(cell));

    /// <summary>True for a formula, or a value that is more than spaces.</summary>
    public static bool IsFilled(CellContent? content) =>
        content is not null && (content.Formula is not null || content.Stored.ToString().Trim().Length > 0);

    /// <summary>
    /// The cell that holds what is seen at a place: the first of its merged range where there is one and it holds a number or formula.
    /// </summary>
    public static CellAddress Merged(WorkbookSnapshot workbook, CellAddress cell)
    {
        if (workbook.FindSheet(cell.Sheet) is not { Merged.Count: > 0 } sheet || IsFilled(workbook, cell))
            return cell;
        foreach (var range in sheet.Merged)
        {
            if (!range.Contains(cell.Row, cell.Column))
                continue;
            var first = new CellAddress(cell.Sheet, range.FirstRow, range.FirstColumn);
            // The label may stand there instead, if a student merged it with an empty answer.
            return workbook.Find(first) is { } content && (content.Formula is not null || content.Stored.IsNumber) ? first : cell;
        }

        return cell;
    }
}
