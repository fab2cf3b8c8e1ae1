namespace ClassKit.CellFormulas.Values;

/// <summary>A rectangle of cells of one sheet; all bounds from 1 and included.</summary>
internal readonly record struct Area(int Sheet, int Top, int Left, int Bottom, int Right)
{
    public int Rows => Bottom - Top + 1;

    public int Columns => Right - Left + 1;

    public bool IsCell => Top == Bottom && Left == Right;

    public bool Contains(int row, int column) => row >= Top && row <= Bottom && column >= Left && column <= Right;

    /// <summary>The rectangle of given corners in any order.</summary>
    public static Area Between(int sheet, int row, int column, int otherRow, int otherColumn) =>
        new(sheet, Math.Min(row, otherRow), Math.Min(column, otherColumn), Math.Max(row, otherRow), Math.Max(column, otherColumn));

    /// <summary>The cells in both, or null.</summary>
    public Area? Intersect(Area other)
    {
        if (Sheet != other.Sheet)
            return null;
        var area = new Area(
            Sheet,
            Math.Max(Top, other.Top),
            Math.Max(Left, other.Left),
            Math.Min(Bottom, other.Bottom),
            Math.Min(Right, other.Right)
        );
        return area.Top <= area.Bottom && area.Left <= area.Right ? area : null;
    }
}
