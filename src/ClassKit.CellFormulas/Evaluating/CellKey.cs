namespace ClassKit.CellFormulas.Evaluating;

/// <summary>A cell as one number, in the order of sheets, rows and columns.</summary>
internal readonly record struct CellKey(ulong Packed)
{
    private const int ColumnBits = 15;
    private const int RowBits = 21;

    public CellKey(int sheet, int row, int column)
        : this((((ulong)sheet << RowBits) + (ulong)row << ColumnBits) + (ulong)column) { }

    public int Sheet => (int)(Packed >> (RowBits + ColumnBits));

    public int Row => (int)(Packed >> ColumnBits) & ((1 << RowBits) - 1);

    public int Column => (int)Packed & ((1 << ColumnBits) - 1);
}
