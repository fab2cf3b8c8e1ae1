namespace ClassKit.CellFormulas.Values;

/// <summary>A rectangle of values. Rows and columns past the stored part are blank, so that a whole column costs no more than what is in it.</summary>
internal sealed class ArrayValue
{
    private readonly CellValue[] _cells;
    private readonly int _storedRows;
    private readonly int _storedColumns;

    public ArrayValue(int rows, int columns)
        : this(rows, columns, new CellValue[rows * columns], rows, columns)
    {
    }

    public ArrayValue(int rows, int columns, CellValue[] cells)
        : this(rows, columns, cells, rows, columns)
    {
    }

    public ArrayValue(int rows, int columns, CellValue[] cells, int storedRows, int storedColumns)
    {
        Rows = rows;
        Columns = columns;
        _cells = cells;
        _storedRows = storedRows;
        _storedColumns = storedColumns;
    }

    public int Rows { get; }

    public int Columns { get; }

    public long Count => (long)Rows * Columns;

    public int StoredRows => _storedRows;

    public int StoredColumns => _storedColumns;

    /// <summary>The cell at a row and column, both from 0.</summary>
    public CellValue this[int row, int column]
    {
        get => row < _storedRows && column < _storedColumns ? _cells[row * _storedColumns + column] : default;
        set => _cells[row * _storedColumns + column] = value;
    }

    /// <summary>The cell at an index that counts row by row.</summary>
    public CellValue At(long index) => this[(int)(index / Columns), (int)(index % Columns)];

    /// <summary>The cell for a place in a result of another shape: one row or column serves all, and past the end there is no value.</summary>
    public CellValue Broadcast(int row, int column)
    {
        if (Rows == 1) row = 0;
        if (Columns == 1) column = 0;
        return row < Rows && column < Columns ? this[row, column] : CellValue.FromError(CellError.NotAvailable);
    }
}
