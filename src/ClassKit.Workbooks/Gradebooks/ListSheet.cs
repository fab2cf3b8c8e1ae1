using ClassKit.Exercises.Dealing;
using ClassKit.Workbooks.Look;
using ClosedXML.Excel;

namespace ClassKit.Workbooks.Gradebooks;

/// <summary>A sheet that is one list: title, a head that stays in sight and repeats on every page, rows that can be filtered.</summary>
internal sealed class ListSheet
{
    private const int HeadRow = 4;
    private readonly IXLWorksheet _sheet;
    private readonly IReadOnlyList<ListColumn> _columns;
    private int _row = HeadRow;

    public ListSheet(XLWorkbook workbook, string name, string title, string explanation, IReadOnlyList<ListColumn> columns)
    {
        _columns = columns;
        _sheet = workbook.AddWorksheet(name);
        _sheet.AsPage();
        _sheet.Range(1, 1, 1, columns.Count).AsTitle();
        _sheet.Cell(1, 1).SetText(" " + title);
        _sheet.Cell(2, 1).SetText(explanation).AsQuiet();
        for (var index = 0; index < columns.Count; index++)
        {
            _sheet.Column(index + 1).Width = columns[index].Width;
            var head = _sheet.Cell(HeadRow, index + 1).SetText(columns[index].Head);
            head.Style.Alignment.Indent = index == 0 ? 0 : 1;
            if (columns[index].IsNumber) head.Style.Alignment.Horizontal = XLAlignmentHorizontalValues.Right;
        }

        _sheet.Range(HeadRow, 1, HeadRow, columns.Count).AsTableHead();
        _sheet.Row(HeadRow).Height = 20;
        _sheet.SheetView.FreezeRows(HeadRow);
    }

    /// <summary>Adds a row; numbers stay numbers, everything else is text.</summary>
    public void Add(params IReadOnlyList<object?> values)
    {
        _row++;
        var height = 18.0;
        for (var index = 0; index < values.Count; index++)
        {
            var cell = _sheet.Cell(_row, index + 1).Wrapped();
            if ((values[index] is decimal points ? (double)points : values[index] as double?) is { } number)
            {
                cell.SetValue(number).Style.Alignment.Horizontal = XLAlignmentHorizontalValues.Right;
                cell.Style.Alignment.Indent = 1;
                cell.Style.NumberFormat.Format = NumberFormats.Readable(number);
                continue;
            }

            var text = values[index]?.ToString() ?? "";
            cell.SetText(text).Style.Alignment.Indent = index == 0 ? 0 : 1;
            height = Math.Max(height, TextHeight.Of(text, _columns[index].Width - 1));
        }

        var row = _sheet.Range(_row, 1, _row, _columns.Count);
        row.AsTableRow();
        row.Style.Alignment.Vertical = XLAlignmentVerticalValues.Top;
        _sheet.Row(_row).Height = height;
    }

    /// <summary>Says in place of rows that there are none.</summary>
    public void AddNothing(string words) => _sheet.Cell(++_row, 1).SetText(words).AsQuiet();

    public void Finish(XLColor tab, DealtClass dealt, bool canFilter)
    {
        if (canFilter) _sheet.Range(HeadRow, 1, _row, _columns.Count).SetAutoFilter();
        _sheet.TabColor = tab;
        _sheet.SetUpPage(_sheet.Range(1, 1, _row, _columns.Count), XLPageOrientation.Landscape, dealt.Paper, dealt.Cohort, dealt.LessonTitle);
        _sheet.PageSetup.SetRowsToRepeatAtTop(HeadRow, HeadRow);
    }
}
