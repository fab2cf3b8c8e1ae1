using ClassKit.CellFormulas.Sheets;
using ClassKit.Exercises.Layout;

namespace ClassKit.Grading.Finding;

/// <summary>The tags on one sheet of a returned workbook. They stand in their column as dealt, or further right if columns were inserted before it.</summary>
internal sealed class TaggedSheet
{
    private const int MostInserted = 4;

    private readonly Dictionary<string, CellAddress?> _cells = new(StringComparer.OrdinalIgnoreCase);
    private readonly Dictionary<int, string> _rows = [];

    public TaggedSheet(SheetSnapshot sheet, PracticeColumns columns)
    {
        Name = sheet.Name;
        foreach (var ((row, column), content) in sheet.Cells.Where(cell => IsTag(cell.Key.Column, cell.Value, columns)).OrderBy(cell => cell.Key))
        {
            var tag = content.Stored.Text.Trim();
            // A tag that stands twice tells nothing.
            _cells[tag] = _cells.ContainsKey(tag) ? null : new CellAddress(sheet.Name, row, column + columns.Value - columns.Tag);
            _rows.TryAdd(row, tag);
        }
    }

    public string Name { get; }

    /// <summary>The value's cell in the one row with that tag; null if none or several have it.</summary>
    public CellAddress? CellOf(string tag) => _cells.GetValueOrDefault(tag);

    /// <summary>The tag of a row, or null.</summary>
    public string? TagOf(int row) => _rows.GetValueOrDefault(row);

    private static bool IsTag(int column, CellContent content, PracticeColumns columns) =>
        column <= columns.Tag + MostInserted && content is { Formula: null, Stored: { IsText: true, Text: var text } } && Tags.IsTag(text.Trim());
}
