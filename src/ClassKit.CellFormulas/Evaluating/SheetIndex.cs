using ClassKit.CellFormulas.Sheets;
using ClassKit.CellFormulas.Values;

namespace ClassKit.CellFormulas.Evaluating;

/// <summary>A sheet prepared for evaluation: how far it reaches and which array formulas fill more than their own cell.</summary>
internal sealed class SheetIndex
{
    private (int Row, int Column)[]? _sorted;

    public SheetIndex(int sheet, SheetSnapshot snapshot)
    {
        Snapshot = snapshot;
        var arrays = new List<(Area Area, CellKey Master)>();
        foreach (var ((row, column), content) in snapshot.Cells)
        {
            LastRow = Math.Max(LastRow, row);
            LastColumn = Math.Max(LastColumn, column);
            if (content.ArrayRange is { } text && ParseArea(sheet, text) is { IsCell: false } area)
                arrays.Add((area, new(sheet, row, column)));
        }

        foreach (var (area, _) in arrays)
        {
            LastRow = Math.Max(LastRow, area.Bottom);
            LastColumn = Math.Max(LastColumn, area.Right);
        }

        Arrays = [.. arrays];
    }

    public SheetSnapshot Snapshot { get; }

    public int LastRow { get; }

    public int LastColumn { get; }

    /// <summary>Array formulas that fill more than their own cell, with the cells that they fill.</summary>
    public (Area Area, CellKey Master)[] Arrays { get; }

    /// <summary>The places of all cells of the file, in reading order.</summary>
    public (int Row, int Column)[] Sorted
    {
        get
        {
            if (_sorted is not null)
                return _sorted;
            var sorted = Snapshot.Cells.Keys.ToArray();
            System.Array.Sort(sorted);
            return _sorted = sorted;
        }
    }

    /// <summary>Reads <c>B2</c> or <c>B2:B9</c>.</summary>
    private static Area? ParseArea(int sheet, string text)
    {
        var colon = text.IndexOf(':', StringComparison.Ordinal);
        var first = colon < 0 ? text : text[..colon];
        var last = colon < 0 ? text : text[(colon + 1)..];
        if (!CellAddress.TryParse("", first, out var from) || !CellAddress.TryParse("", last, out var to))
            return null;
        return Area.Between(sheet, from.Row, from.Column, to.Row, to.Column);
    }
}
