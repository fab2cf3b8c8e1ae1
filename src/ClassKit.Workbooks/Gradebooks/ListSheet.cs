using ClassKit.Exercises.Dealing;
using ClassKit.Workbooks.Look;
using ClosedXML.Excel;

namespace ClassKit.Workbooks.Gradebooks;

/// <summary>A sheet that is one list: title, a head that stays in sight and repeats on every page, rows that can be filtered.</summary>
internal sealed class ListSheet
{
    private const int HeadRow = 4;

    /// <summary>The columns that say whose and what a row is.</summary>
    private const int Repeated = 2;
    private const double LeastOfWidth = 0.55;
    private readonly IXLWorksheet _sheet;
    private readonly IReadOnlyList<ListColumn> _columns;
    private readonly string _explanation;
    private readonly Dictionary<(int Column, string NumberFormat, bool IsLikeFormula), IXLCell> _styled = [];
    private int _row = HeadRow;

    public ListSheet(XLWorkbook workbook, string name, string title, string explanation, IReadOnlyList<ListColumn> columns)
    {
        _explanation = explanation;
        columns = _columns = Fitting(columns);
        _sheet = workbook.AddWorksheet(name);
        _sheet.AsPage();
        _sheet.Range(1, 1, 1, columns.Count).AsTitle();
        _sheet.Cell(1, 1).SetText(" " + title);
        for (var index = 0; index < columns.Count; index++)
        {
            _sheet.Column(index + 1).Width = columns[index].Width;
            var head = _sheet.Cell(HeadRow, index + 1).SetText(columns[index].Head);
            head.Style.Alignment.Indent = index == 0 ? 0 : 1;
            if (columns[index].IsNumber)
                head.Style.Alignment.Horizontal = XLAlignmentHorizontalValues.Right;
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
            if ((values[index] is decimal points ? (double)points : values[index] as double?) is { } number)
            {
                Styled(index, NumberFormats.Readable(number), isLikeFormula: false).SetValue(number);
                continue;
            }

            var text = values[index]?.ToString() ?? "";
            Styled(index, "", CellText.LooksLikeFormula(CellText.Storable(text))).SetText(text);
            if (_columns[index].BreaksLines)
                height = Math.Max(height, TextHeight.Of(text, _columns[index].Width - 1));
        }

        _sheet.Row(_row).Height = height;
    }

    /// <summary>
    /// A cell of the last row in the style of its column: each style is put together once, for the library takes longer over one than over
    /// a row of values.
    /// </summary>
    private IXLCell Styled(int index, string numberFormat, bool isLikeFormula)
    {
        var cell = _sheet.Cell(_row, index + 1);
        if (_styled.TryGetValue((index, numberFormat, isLikeFormula), out var like))
        {
            cell.Style = like.Style;
            return cell;
        }

        if (_columns[index].BreaksLines)
            cell.Wrapped();
        var alignment = cell.Style.Alignment;
        alignment.Vertical = XLAlignmentVerticalValues.Top;
        alignment.Indent = index == 0 && numberFormat.Length == 0 ? 0 : 1;
        if (numberFormat.Length > 0)
        {
            alignment.Horizontal = XLAlignmentHorizontalValues.Right;
            cell.Style.NumberFormat.Format = numberFormat;
        }

        cell.AsRange().AsTableRow();
        return _styled[(index, numberFormat, isLikeFormula)] = cell;
    }

    /// <summary>Says in place of rows that there are none.</summary>
    public void AddNothing(string words) => _sheet.Cell(++_row, 1).SetText(words).AsQuiet();

    public void Finish(XLColor tab, DealtClass dealt, bool canFilter)
    {
        if (canFilter)
            _sheet.Range(HeadRow, 1, _row, _columns.Count).SetAutoFilter();
        _sheet.TabColor = tab;
        var printed = _columns.Count(column => column.OnPaper);
        _sheet.SetUpPage(_sheet.Range(1, 1, _row, printed), XLPageOrientation.Landscape, dealt.Paper, dealt.Cohort, dealt.LessonTitle);
        _sheet.PageSetup.SetRowsToRepeatAtTop(HeadRow, HeadRow);
        var last = _sheet.SpreadOverPages(dealt.Paper, printed, Repeated);
        _sheet.Across(2, 1, last, _explanation).AsQuiet();
    }

    /// <summary>
    /// Texts that break within their cells give way where that makes one page of two, and keep most of their width; else who and what stand
    /// on each page.
    /// </summary>
    private static IReadOnlyList<ListColumn> Fitting(IReadOnlyList<ListColumn> columns)
    {
        var printed = columns.Where(column => column.OnPaper).ToList();
        var texts = printed.Where(IsText).Sum(column => column.Width);
        var room = PageLook.ReadableWidth(printed.Count) - printed.Where(column => !IsText(column)).Sum(column => column.Width);
        return room >= texts || room < texts * LeastOfWidth
            ? columns
            : [.. columns.Select(column => IsText(column) ? column with { Width = Math.Floor(column.Width * room / texts) } : column)];
    }

    /// <summary>Wider than a name, which stands in every row and would make two lines of each.</summary>
    private static bool IsText(ListColumn column) => !column.IsNumber && column.Width > GridHead.NameWidth;
}
