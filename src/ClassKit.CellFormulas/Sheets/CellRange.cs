namespace ClassKit.CellFormulas.Sheets;

/// <summary>A rectangle of cells on one sheet, both corners included, rows and columns counted from 1.</summary>
/// <param name="FirstRow">The top row.</param>
/// <param name="FirstColumn">The left column.</param>
/// <param name="LastRow">The bottom row.</param>
/// <param name="LastColumn">The right column.</param>
public readonly record struct CellRange(int FirstRow, int FirstColumn, int LastRow, int LastColumn)
{
    /// <summary>True if the cell lies inside.</summary>
    public bool Contains(int row, int column) => row >= FirstRow && row <= LastRow && column >= FirstColumn && column <= LastColumn;

    /// <summary>Reads <c>B2:D9</c>, or <c>B2</c> for a single cell; false for anything else.</summary>
    public static bool TryParse(ReadOnlySpan<char> text, out CellRange range)
    {
        range = default;
        var colon = text.IndexOf(':');
        if (!CellAddress.TryParse("", colon < 0 ? text : text[..colon], out var first))
            return false;
        if (!CellAddress.TryParse("", colon < 0 ? text : text[(colon + 1)..], out var last))
            return false;
        range = new(
            Math.Min(first.Row, last.Row),
            Math.Min(first.Column, last.Column),
            Math.Max(first.Row, last.Row),
            Math.Max(first.Column, last.Column)
        );
        return true;
    }
}
