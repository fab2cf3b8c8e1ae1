using System.Globalization;
using System.Xml;
using ClassKit.CellFormulas.Sheets;
using ClassKit.CellFormulas.Values;
using ClassKit.Grading.Findings.Refusals;
using ClassKit.Workbooks.Returned.Packages;

namespace ClassKit.Workbooks.Returned.SpreadsheetMl;

/// <summary>Reads the filled cells of one sheet.</summary>
internal sealed class SheetPart
{
    private readonly string _sheet;
    private readonly SheetContext _context;
    private readonly ReadBudget _budget;
    private readonly SharedFormulas _shared;
    private readonly Dictionary<(int Row, int Column), CellContent> _cells = [];
    private readonly HashSet<int> _hidden = [];
    private string? _filter;
    private bool _isFiltered;
    private readonly List<CellRange> _merged = [];
    private int _row;
    private int _column;

    private SheetPart(string sheet, SheetContext context)
    {
        _sheet = sheet;
        _context = context;
        _budget = context.Budget;
        _shared = new(context.Budget);
    }

    public static SheetSnapshot Read(Package package, string part, string sheet, SheetContext context)
    {
        var reading = new SheetPart(sheet, context);
        XmlPart.TryRead(package, part, xml =>
        {
            while (xml.Next())
                reading.Take(xml);
        });
        foreach (var (at, formula) in reading._shared.Expand())
            reading._cells[at] = reading._cells[at] with { Formula = formula };
        return new(sheet, reading._cells)
        {
            HiddenRows = reading._hidden,
            FilteredRows = reading._isFiltered ? RowsOf(reading._filter) : null,
            Merged = reading._merged,
        };
    }

    /// <summary>The rows of a range below its head.</summary>
    private static (int First, int Last)? RowsOf(string? range) =>
        range is not null && range.Contains(':', StringComparison.Ordinal) && CellRange.TryParse(range, out var rows)
            ? (rows.FirstRow + 1, rows.LastRow)
            : null;

    private CellAddress Here => new(_sheet, _row, _column);

    private void Take(XmlReader xml)
    {
        if (xml.IsAt("row"))
        {
            _row = xml.GetAttribute("r") is { } number ? ParseRow(number) : _row + 1;
            _column = 0;
            if (xml.Flag("hidden"))
                _hidden.Add(_row);
        }
        else if (xml.IsAt("autoFilter"))
        {
            _filter = xml.GetAttribute("ref");
        }
        else if (xml.IsAt("filterColumn"))
        {
            _isFiltered = true;
        }
        else if (xml.IsAt("c"))
        {
            Place(xml.GetAttribute("r"));
            TakeCell(xml);
        }
        else if (xml.IsAt("mergeCell") && CellRange.TryParse(xml.GetAttribute("ref"), out var merged))
        {
            _budget.CountCell();
            _merged.Add(merged);
        }
    }

    private int ParseRow(string number) =>
        int.TryParse(number, NumberStyles.None, CultureInfo.InvariantCulture, out var row) && row is >= 1 and <= CellAddress.LastRow
            ? row
            : throw RefusalException.Damaged(new Damage.RowNumber(new(_sheet), new(number)));

    /// <summary>A cell that does not say where it is follows the one before it (ECMA-376 Part 1, 18.3.1.4).</summary>
    private void Place(string? reference)
    {
        if (reference is null)
            _column++;
        else if (CellAddress.TryParse(_sheet, reference, out var address))
            (_row, _column) = (address.Row, address.Column);
        else
            throw RefusalException.Damaged(new Damage.CellName(new(_sheet), new(reference)));

        if (_row is < 1 or > CellAddress.LastRow || _column is < 1 or > CellAddress.LastColumn)
            throw RefusalException.Damaged(new Damage.BeyondSheet(new(_sheet)));
    }

    private void TakeCell(XmlReader xml)
    {
        if (xml.IsEmptyElement)
            return;
        var type = xml.GetAttribute("t") ?? "n";
        var depth = xml.Depth;
        string? value = null;
        string? inline = null;
        CellFormulaText formula = default;
        while (xml.Next() && xml.Depth > depth)
        {
            if (xml.IsAt("v"))
                value = xml.ReadText();
            else if (xml.IsAt("is"))
                inline = xml.ReadStringItem();
            else if (xml.IsAt("f"))
                formula = TakeFormula(xml);
        }

        var stored = type == "inlineStr" ? TextOf(inline ?? value) : ValueOf(type, value);
        if (stored.IsBlank && !formula.IsThere)
            return;
        if (!_cells.ContainsKey((_row, _column)))
            _budget.CountCell();
        _cells[(_row, _column)] = new(stored, formula.Text, formula.ArrayRange);
    }

    private CellFormulaText TakeFormula(XmlReader xml)
    {
        var (type, range, group) = (xml.GetAttribute("t"), xml.GetAttribute("ref"), xml.GetAttribute("si"));
        var text = _budget.CountFormula(xml.ReadText());
        switch (type)
        {
            case "shared" when text.Length == 0:
                _shared.Follow(group ?? "", (_row, _column));
                return new("", null);
            case "shared":
                _shared.Lead(group ?? "", (_row, _column), text);
                return new(text, null);
            case "array":
                return new(text, range);
            case "dataTable":
                // A what-if table has no text of its own; this one says what it is, and that nobody but its program computes it.
                return new("TABLE()", range);
            default:
                return text.Length == 0 ? default : new(text, null);
        }
    }

    private CellValue ValueOf(string type, string? value) =>
        type switch
        {
            "s" => string.IsNullOrEmpty(value) ? CellValue.Blank : SharedText(value),
            "str" => TextOf(value),
            "b" => string.IsNullOrEmpty(value) ? CellValue.Blank : CellValue.FromLogical(value is "1" or "true"),
            "e" => string.IsNullOrEmpty(value) ? CellValue.Blank : ErrorOf(value),
            "d" => string.IsNullOrEmpty(value) ? CellValue.Blank : DateOf(value),
            _ => string.IsNullOrWhiteSpace(value) ? CellValue.Blank : NumberOf(value),
        };

    private CellValue TextOf(string? text) => text is null ? CellValue.Blank : CellValue.FromText(_budget.CountText(text));

    private CellValue SharedText(string index) =>
        int.TryParse(index, NumberStyles.AllowLeadingWhite | NumberStyles.AllowTrailingWhite, CultureInfo.InvariantCulture, out var at)
        && at < _context.Strings.Count
            ? CellValue.FromText(_context.Strings[at])
            : throw RefusalException.Damaged(new Damage.MissingText(Here));

    private CellValue NumberOf(string text) =>
        double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out var number)
            ? CellValue.FromNumber(number)
            : throw RefusalException.Damaged(new Damage.NoNumber(new(_sheet), Here.Cell, new(text), IsDate: false));

    /// <summary>
    /// Newer programs store errors that ECMA-376 does not know (<c>#SPILL!</c>, <c>#CALC!</c>); those count as a wrong value.
    /// </summary>
    private static CellValue ErrorOf(string text) =>
        CellValue.FromError(CellErrorText.TryParse(text, out var error) ? error : CellError.Value);

    private CellValue DateOf(string text) =>
        DateTime.TryParse(
            text,
            CultureInfo.InvariantCulture,
            DateTimeStyles.AdjustToUniversal | DateTimeStyles.NoCurrentDateDefault,
            out var date
        )
        && date.Year >= 1900
            ? CellValue.FromNumber(DayNumber.Of(date, _context.Dates))
            : throw RefusalException.Damaged(new Damage.NoNumber(new(_sheet), Here.Cell, new(text), IsDate: true));

    private readonly record struct CellFormulaText(string? Text, string? ArrayRange)
    {
        public bool IsThere => Text is not null;
    }
}
