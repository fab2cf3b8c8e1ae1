using ClassKit.CellFormulas.Sheets;
using ClassKit.Exercises.Layout;

namespace ClassKit.Grading.Finding;

/// <summary>
/// The tags on one sheet of a returned workbook. They stand in their column as dealt, or further right if columns were inserted before it.
/// </summary>
internal sealed class TaggedSheet
{
    private const int MostInserted = 4;

    private readonly Dictionary<string, CellAddress?> _cells = new(StringComparer.OrdinalIgnoreCase);
    private readonly Dictionary<int, string> _rows = [];
    private readonly int _moved;

    public TaggedSheet(SheetSnapshot sheet, PracticeColumns columns)
    {
        Name = sheet.Name;
        foreach (var ((row, column), tag) in TagsOn(sheet, columns).OrderBy(tag => tag.Place))
        {
            // A tag that stands twice tells nothing.
            _cells[tag] = _cells.ContainsKey(tag) ? null : new CellAddress(sheet.Name, row, column + columns.Value - columns.Tag);
            _rows.TryAdd(row, tag);
        }
    }

    private TaggedSheet(TaggedSheet sheet, int moved) =>
        (Name, _cells, _rows, _moved) = (sheet.Name, sheet._cells, sheet._rows, sheet._moved + moved);

    public string Name { get; }

    /// <summary>The sheet whose values stand so many columns further from their tags than they were dealt.</summary>
    public TaggedSheet Moved(int columns) => columns == 0 ? this : new(this, columns);

    /// <summary>The value's cell in the one row with that tag; null if none or several have it.</summary>
    public CellAddress? CellOf(string tag) =>
        _cells.GetValueOrDefault(tag) is { } cell ? cell with { Column = cell.Column + _moved } : null;

    /// <summary>The tag of a row, or null.</summary>
    public string? TagOf(int row) => _rows.GetValueOrDefault(row);

    private static List<((int Row, int Column) Place, string Tag)> TagsOn(SheetSnapshot sheet, PracticeColumns columns)
    {
        var tags = new List<((int, int), string)>();
        foreach (var (place, content) in sheet.Cells)
        {
            if (
                place.Column <= columns.Tag + MostInserted
                && content is { Formula: null, Stored: { IsText: true, Text: var text } }
                && text.Trim() is var tag
                && Tags.IsTag(tag)
            )
                tags.Add((place, tag));
        }
        return tags;
    }
}
