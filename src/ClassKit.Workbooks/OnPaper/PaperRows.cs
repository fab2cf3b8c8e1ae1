using ClassKit.CellFormulas.Values;
using ClassKit.Exercises.Authoring;
using ClassKit.Exercises.Dealing;
using ClassKit.Grading.OnPaper;
using ClassKit.Workbooks.Look;
using ClosedXML.Excel;

namespace ClassKit.Workbooks.OnPaper;

/// <summary>The students' rows of the sheet for answers on paper.</summary>
internal sealed class PaperRows(IXLWorksheet sheet, PaperGrid grid)
{
    private const double Height = 18;

    public void Write(DealtStudent student, int row, PaperWork? typed)
    {
        sheet.Cell(row, PaperGrid.NameColumn).SetText(student.Who.Shown).Wrapped();
        sheet.Cell(row, PaperGrid.IdColumn).SetText(student.Who.Id).Wrapped().AsQuiet();
        sheet.Row(row).Height = Math.Max(
            Height,
            Math.Max(TextHeight.Of(student.Who.Shown, PaperHead.NameWidth), TextHeight.Of(student.Who.Id, PaperHead.IdWidth))
        );
        foreach (var column in grid.Columns)
        {
            var cell = sheet.Cell(row, column.Column);
            if (!student.Has(column.Exercise.Exercise.Id))
            {
                sheet.Range(row, column.Column, row, column.LastColumn).Style.Fill.BackgroundColor = Palette.Crumb;
                continue;
            }
            Answer(cell, column.Answer.Part);
            var answer = typed?.Answers.FirstOrDefault(one =>
                one.Exercise == column.Exercise.Exercise.Id && one.Part == column.Answer.Part.Id
            );
            Value(cell, answer?.Written ?? CellValue.Blank);
            if (column.TickColumn is not { } tick)
                continue;
            TickCell(sheet.Cell(row, tick));
            if (answer?.MethodShown == true)
                sheet.Cell(row, tick).SetText(PaperGrid.Tick);
        }
    }

    private static void Answer(IXLCell cell, Part part)
    {
        cell.AsEntry();
        cell.Style.Alignment.Horizontal =
            part.InWords is not null ? XLAlignmentHorizontalValues.Left
            : part.Choice is not null ? XLAlignmentHorizontalValues.Center
            : XLAlignmentHorizontalValues.Right;
        if (part.InWords is not null)
            cell.Wrapped();
        // With the percent format a typed 65 is 65 %, as on paper; all other numbers keep the digits that were typed.
        if (part.Unit.IsPercent)
            cell.Style.NumberFormat.Format = "0.###############\\ %";
        if (part.Choice is { } choice)
            List(cell, Enumerable.Range(0, choice.From.Options.Count).Select(letter => ((char)('A' + letter)).ToString()));
    }

    private static void Value(IXLCell cell, CellValue written)
    {
        if (written.IsText)
            cell.SetText(written.Text);
        else if (written.IsNumber)
            cell.Value = written.Number;
        else if (written.Kind == CellValueKind.Logical)
            cell.Value = written.Logical;
    }

    private static void TickCell(IXLCell cell)
    {
        cell.AsEntry();
        cell.Style.Alignment.Horizontal = XLAlignmentHorizontalValues.Center;
        List(cell, [PaperGrid.Tick]);
    }

    /// <summary>A list to choose from that refuses nothing: an x is a tick as well.</summary>
    private static void List(IXLCell cell, IEnumerable<string> items)
    {
        var validation = cell.SetDataValidation();
        validation.List($"\"{string.Join(',', items)}\"", true);
        validation.IgnoreBlanks = true;
        validation.ShowErrorMessage = false;
    }
}
