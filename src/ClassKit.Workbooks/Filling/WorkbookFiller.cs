using ClassKit.CellFormulas.Sheets;
using ClassKit.Workbooks.Dealing;
using ClassKit.Workbooks.Look;
using ClassKit.Workbooks.Packages;
using ClosedXML.Excel;

namespace ClassKit.Workbooks.Filling;

/// <summary>Does to a dealt workbook what a student would: for rehearsals and for the returned workbooks of an invented class.</summary>
public static class WorkbookFiller
{
    /// <summary>Does edits in order and stores what all formulas come to, as a spreadsheet program does on saving.</summary>
    /// <param name="workbook">A workbook of <see cref="DealtWorkbookWriter"/>.</param>
    /// <param name="edits">What to do. Cells are counted when an edit's turn comes, so that a row inserted before moves them.</param>
    /// <returns>The workbook's bytes; the same for the same arguments.</returns>
    /// <exception cref="ArgumentException">An edit names a sheet or a name that is not there.</exception>
    public static byte[] Fill(byte[] workbook, IReadOnlyList<WorkbookEdit> edits)
    {
        ArgumentNullException.ThrowIfNull(workbook);
        ArgumentNullException.ThrowIfNull(edits);
        using var opened = new XLWorkbook(new MemoryStream(workbook));
        foreach (var edit in edits)
            Do(opened, edit);
        var filled = opened.ToBytesWithValues();
        return Pictures.Paste(filled, [.. edits.OfType<PastePicture>()]);
    }

    private static void Do(XLWorkbook workbook, WorkbookEdit edit)
    {
        switch (edit)
        {
            case EnterFormula enter:
                CellOf(workbook, enter.Cell).SetFormulaA1(enter.Formula.TrimStart('='));
                break;
            case EnterNumber enter:
                CellOf(workbook, enter.Cell).SetValue(enter.Number);
                break;
            case EnterText enter:
                CellOf(workbook, enter.Cell).SetText(enter.Text);
                break;
            case InsertRow insert:
                SheetOf(workbook, insert.Sheet).Row(insert.AboveRow).InsertRowsAbove(1);
                break;
            case DeleteName delete:
                if (workbook.NamedRange(delete.Name) is null)
                    throw new ArgumentException($"The workbook has no name '{delete.Name}'.", nameof(edit));
                workbook.NamedRanges.Delete(delete.Name);
                break;
            case PastePicture paste:
                SheetOf(workbook, paste.TopLeft.Sheet);
                break;
            default:
                throw new ArgumentException($"No way to do {edit.GetType().Name}.", nameof(edit));
        }
    }

    private static IXLCell CellOf(XLWorkbook workbook, CellAddress address) =>
        SheetOf(workbook, address.Sheet).Cell(address.Row, address.Column);

    private static IXLWorksheet SheetOf(XLWorkbook workbook, string name) =>
        workbook.TryGetWorksheet(name, out var sheet)
            ? sheet
            : throw new ArgumentException($"The workbook has no sheet '{name}'.", nameof(name));
}
