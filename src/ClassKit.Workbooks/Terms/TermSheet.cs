using ClassKit.Workbooks.Gradebooks;
using ClassKit.Workbooks.Look;
using ClosedXML.Excel;

namespace ClassKit.Workbooks.Terms;

/// <summary>A sheet of the term's workbook: title, heads, a row for weights, and a row a student.</summary>
internal sealed class TermSheet
{
    private const double NumberWidth = 13;

    /// <summary>Ids of most names on one line.</summary>
    private const double IdWidth = GridHead.IdWidth;

    /// <summary>The highest that spreadsheet programs show a row, in points.</summary>
    private const double HighestRow = 409;
    private readonly IXLWorksheet _sheet;
    private readonly TermGrid _grid;
    private readonly int _last;
    private readonly string _explanation;

    /// <summary>The columns that a page may begin with.</summary>
    private readonly List<int> _beginnings = [];

    public TermSheet(XLWorkbook workbook, string name, string title, string explanation, TermGrid grid, int last)
    {
        (_grid, _last, _explanation) = (grid, last, explanation);
        _sheet = workbook.AddWorksheet(name);
        _sheet.AsPage();
        _sheet.Range(1, 1, 1, last).AsTitle();
        // The first column stands on every page, so that only a short word may stand in it.
        _sheet.Cell(1, 1).SetText(" " + title);
        _sheet.Cell(1, 2).SetText(grid.Term.Title);
        _sheet.Range(TermGrid.HeadRow, 1, TermGrid.WeightRow, last).AsTableHead();
        _sheet.Column(1).Width = GridHead.NameWidth;
        _sheet.Column(2).Width = IdWidth;
        _sheet.Cell(TermGrid.HeadRow, 1).SetText("Student");
        _sheet.Cell(TermGrid.HeadRow, 2).SetText("Id");
        foreach (var (index, student) in grid.Term.Class.Students.Index())
        {
            var row = TermGrid.FirstRow + index;
            _sheet.Cell(row, 1).SetText(student.Shown).Wrapped();
            _sheet.Cell(row, 2).SetText(student.Id).Wrapped().AsQuiet();
            _sheet.Row(row).Height = Math.Max(
                18,
                Math.Max(TextHeight.Of(student.Shown, GridHead.NameWidth), TextHeight.Of(student.Id, IdWidth))
            );
            _sheet.Range(row, 1, row, last).AsTableRow();
        }
    }

    public IXLCell At(int row, int column) => _sheet.Cell(row, column);

    /// <summary>What the row below the heads holds.</summary>
    public void Weights(string name) => _sheet.Cell(TermGrid.WeightRow, 1).SetText(name);

    /// <summary>The head of a column.</summary>
    /// <param name="column">Counted from 1.</param>
    /// <param name="text">What stands in it.</param>
    /// <param name="width">In characters.</param>
    /// <param name="belongs">True if it belongs to the column before it, also on paper.</param>
    public void Head(int column, string text, double width = NumberWidth, bool belongs = false)
    {
        if (!belongs)
            _beginnings.Add(column);
        _sheet.Column(column).Width = width;
        var head = _sheet.Cell(TermGrid.HeadRow, column).SetText(text).Wrapped();
        head.Style.Alignment.Horizontal = XLAlignmentHorizontalValues.Right;
        _sheet.Row(TermGrid.HeadRow).Height = Math.Clamp(TextHeight.Of(text, width - 2), _sheet.Row(TermGrid.HeadRow).Height, HighestRow);
    }

    /// <summary>A formula for every student.</summary>
    public void Formulas(int column, string format, Func<int, string> formula)
    {
        for (var row = TermGrid.FirstRow; row <= _grid.LastRow; row++)
        {
            var cell = _sheet.Cell(row, column).SetFormulaA1(formula(row));
            cell.Style.NumberFormat.Format = format;
            cell.Style.Alignment.Horizontal = XLAlignmentHorizontalValues.Right;
        }
    }

    public void Finish()
    {
        _sheet.SheetView.Freeze(TermGrid.WeightRow, 1);
        _sheet.SetUpPage(
            _sheet.Range(1, 1, _grid.LastRow, _last),
            XLPageOrientation.Landscape,
            _grid.Term.Class.Paper,
            _grid.Term.Class.Cohort,
            _grid.Term.Title
        );
        _sheet.PageSetup.SetRowsToRepeatAtTop(TermGrid.HeadRow, TermGrid.WeightRow);
        var last = _sheet.SpreadOverPages(_grid.Term.Class.Paper, _last, 1, _beginnings);
        _sheet.Across(2, 2, last, _explanation).AsQuiet();
        _sheet.ProtectFromSlips();
    }
}
