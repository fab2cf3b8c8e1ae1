using ClassKit.CellFormulas.Sheets;
using ClassKit.CellFormulas.Values;

namespace ClassKit.Workbooks.Tables;

/// <summary>A table on a sheet that somebody may have sorted or moved: columns by the words of the head.</summary>
internal sealed class FoundTable
{
    private readonly SheetSnapshot _sheet;
    private readonly Dictionary<string, int> _columns;

    private FoundTable(SheetSnapshot sheet, int head)
    {
        _sheet = sheet;
        _columns = sheet
            .Cells.Where(cell => cell.Key.Row == head && cell.Value.Stored.IsText)
            .OrderBy(cell => cell.Key.Column)
            .DistinctBy(cell => cell.Value.Stored.Text.Trim())
            .ToDictionary(cell => cell.Value.Stored.Text.Trim(), cell => cell.Key.Column);
        Rows = [.. sheet.Cells.Keys.Select(key => key.Row).Where(row => row > head).Distinct().Order()];
    }

    /// <summary>The rows below the head that have something in them.</summary>
    public IReadOnlyList<int> Rows { get; }

    /// <summary>The table whose head has all of these words, if the sheet has one.</summary>
    public static FoundTable? In(SheetSnapshot sheet, IReadOnlyList<string> heads)
    {
        var rows = sheet
            .Cells.Where(cell => cell.Value.Stored.IsText && heads.Contains(cell.Value.Stored.Text.Trim()))
            .GroupBy(cell => cell.Key.Row)
            .Where(row => row.Select(cell => cell.Value.Stored.Text.Trim()).Distinct().Count() == heads.Count)
            .Select(row => row.Key)
            .ToList();
        return rows.Count == 0 ? null : new(sheet, rows.Min());
    }

    public bool Has(string head) => _columns.ContainsKey(head);

    public CellValue Value(int row, string head) => _sheet.Cells.GetValueOrDefault((row, _columns[head]))?.Stored ?? CellValue.Blank;

    public string Text(int row, string head) => Value(row, head).ToString().Trim();

    /// <summary>A cell with its sheet, as the instructor finds it.</summary>
    public string Cell(int row, string head) => $"{_sheet.Name}!{new CellAddress(_sheet.Name, row, _columns[head]).Cell}";
}
