using System.Globalization;
using System.Xml;
using ClassKit.CellFormulas.Sheets;
using ClassKit.CellFormulas.Values;
using ClassKit.Grading.Findings.Refusals;
using ClassKit.Workbooks.Returned.Packages;

namespace ClassKit.Workbooks.Returned.OpenDocument;

/// <summary>
/// Gathers the filled cells of one table of an OpenDocument spreadsheet, where equal rows and cells are written once with a count.
/// </summary>
internal sealed class OpenDocumentTable
{
    private readonly DateSystem _dates;
    private readonly ReadBudget _budget;
    private readonly Dictionary<(int Row, int Column), CellContent> _cells = [];
    private readonly List<CellRange> _merged = [];
    private int _row;
    private int _rows = 1;
    private int _column;

    public OpenDocumentTable(string name, DateSystem dates, ReadBudget budget)
    {
        Name = name;
        _dates = dates;
        _budget = budget;
    }

    public string Name { get; }

    public SheetSnapshot ToSheet() => new(Name, _cells) { Merged = _merged };

    public void BeginRow(XmlReader xml)
    {
        _row += _rows;
        _rows = Count(xml, "number-rows-repeated");
        _column = 0;
    }

    public void TakeCell(XmlReader xml)
    {
        var cells = Count(xml, "number-columns-repeated");
        var first = _column + 1;
        _column = Math.Min(_column + cells, CellAddress.LastColumn + 1);
        Merge(xml, first);
        var type = xml.GetAttribute("value-type", OpenDocumentXml.Office);
        var value = xml.GetAttribute("value", OpenDocumentXml.Office);
        var text = xml.GetAttribute("string-value", OpenDocumentXml.Office);
        var date = xml.GetAttribute("date-value", OpenDocumentXml.Office);
        var time = xml.GetAttribute("time-value", OpenDocumentXml.Office);
        var logical = xml.GetAttribute("boolean-value", OpenDocumentXml.Office);
        var formula = xml.GetAttribute("formula", OpenDocumentXml.Table);
        var finerType = xml.GetAttribute("value-type", OpenDocumentXml.Finer);
        var shown = xml.ReadParagraphs();
        var stored = type switch
        {
            // An error is stored as the text that is shown, whatever type stands beside it.
            _ when formula is not null && finerType is null or "error" && OpenDocumentErrors.TryParse(shown, out var error) =>
                CellValue.FromError(error),
            "float" or "percentage" or "currency" => NumberOf(value),
            "boolean" => CellValue.FromLogical(logical == "true"),
            "date" => DateOf(date),
            "time" => TimeOf(time),
            "string" or null => TextOf(string.IsNullOrEmpty(text) ? shown : text),
            _ => CellValue.Blank,
        };
        if (stored.IsBlank && formula is null)
            return;
        if (_row > CellAddress.LastRow || first > CellAddress.LastColumn)
            throw RefusalException.Damaged(new Damage.BeyondSheet(new(Name)));
        if (formula is not null)
            formula = _budget.CountFormula(formula);
        Keep(new(stored, formula is null ? null : OpenFormulaText.ToCellFormula(formula)), first, cells);
    }

    private void Merge(XmlReader xml, int column)
    {
        var (columns, rows) = (Count(xml, "number-columns-spanned"), Count(xml, "number-rows-spanned"));
        if (columns == 1 && rows == 1)
            return;
        _budget.CountCell();
        _merged.Add(new(_row, column, _row + rows - 1, column + columns - 1));
    }

    /// <summary>Repeated cells hold the same each; a formula among them is never repeated by the programs that write these files.</summary>
    private void Keep(CellContent content, int first, int cells)
    {
        for (var row = _row; row < _row + _rows && row <= CellAddress.LastRow; row++)
        {
            for (var column = first; column < first + cells && column <= CellAddress.LastColumn; column++)
            {
                _budget.CountCell();
                _cells[(row, column)] = content;
            }
        }
    }

    private static int Count(XmlReader xml, string attribute) =>
        int.TryParse(xml.GetAttribute(attribute, OpenDocumentXml.Table), NumberStyles.None, CultureInfo.InvariantCulture, out var count)
        && count > 1
            ? Math.Min(count, CellAddress.LastRow)
            : 1;

    private CellValue TextOf(string? text) => text is null ? CellValue.Blank : CellValue.FromText(_budget.CountText(text));

    private CellValue NumberOf(string? text) =>
        double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out var number)
            ? CellValue.FromNumber(number)
            : throw RefusalException.Damaged(new Damage.NoNumber(new(Name), "", new(text ?? ""), IsDate: false));

    private CellValue DateOf(string? text) =>
        DateTime.TryParse(
            text,
            CultureInfo.InvariantCulture,
            DateTimeStyles.AdjustToUniversal | DateTimeStyles.NoCurrentDateDefault,
            out var date
        )
            ? CellValue.FromNumber(DayNumber.Of(date, _dates))
            : CellValue.FromText(text ?? "");

    /// <summary>A time of day or a duration as a share of a day, as in <c>PT13H30M00S</c>.</summary>
    private static CellValue TimeOf(string? text)
    {
        try
        {
            return text is null ? CellValue.Blank : CellValue.FromNumber(XmlConvert.ToTimeSpan(text).TotalDays);
        }
        catch (Exception problem) when (problem is FormatException or OverflowException)
        {
            return CellValue.FromText(text!);
        }
    }
}
