using System.Collections.Frozen;

namespace ClassKit.CellFormulas.Sheets;

/// <summary>One sheet of a workbook as read: its non-empty cells by row and column, both counted from 1.</summary>
/// <param name="Name">The name on the tab.</param>
/// <param name="Cells">The cells that hold a value or a formula.</param>
public sealed record SheetSnapshot(string Name, IReadOnlyDictionary<(int Row, int Column), CellContent> Cells)
{
    /// <summary>The rows that do not show, counted from 1.</summary>
    public IReadOnlySet<int> HiddenRows { get; init; } = FrozenSet<int>.Empty;

    /// <summary>The rows that a filter is on for, so that it is the filter that hides them; null for none.</summary>
    public (int First, int Last)? FilteredRows { get; init; }

    /// <summary>The ranges that are merged into one cell, of which only the first holds anything.</summary>
    public IReadOnlyList<CellRange> Merged { get; init; } = [];
}
