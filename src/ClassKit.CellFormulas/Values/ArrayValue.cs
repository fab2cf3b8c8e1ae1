using ClassKit.CellFormulas.Budget;

namespace ClassKit.CellFormulas.Values;

/// <summary>
/// A rectangle of values. Rows and columns past the stored part are blank, so that a whole column costs no more than what is in it.
/// Making one and reading each of its cells is counted.
/// </summary>
internal sealed class ArrayValue
{
    private const int TicksPerCellMade = 2;

    private readonly Meter _meter;
    private readonly CellValue[] _cells;
    private readonly int _storedRows;
    private readonly int _storedColumns;
    private Dictionary<(bool IsColumn, int At), object?>? _made;

    public ArrayValue(Meter meter, int rows, int columns)
        : this(meter, rows, columns, new CellValue[rows * columns]) { }

    public ArrayValue(Meter meter, int rows, int columns, CellValue[] cells)
        : this(meter, rows, columns, cells, rows, columns) { }

    public ArrayValue(Meter meter, int rows, int columns, CellValue[] cells, int storedRows, int storedColumns)
    {
        meter.Take((long)cells.Length * TicksPerCellMade);
        _meter = meter;
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
        get
        {
            var cell = row < _storedRows && column < _storedColumns ? _cells[row * _storedColumns + column] : default;
            _meter.TakeFor(cell);
            return cell;
        }
        set => _cells[row * _storedColumns + column] = value;
    }

    /// <summary>The cell at an index that counts row by row.</summary>
    public CellValue At(long index) => this[(int)(index / Columns), (int)(index % Columns)];

    /// <summary>
    /// Something made of a row or column, such as an index, from the second time on that it is wanted; null the first time, when looking
    /// through will do.
    /// </summary>
    public TMade? OnceWantedAgain<TMade, TFrom>((bool IsColumn, int At) line, TFrom from, Func<TFrom, TMade> make)
        where TMade : class
    {
        if ((_made ??= []).TryGetValue(line, out var made))
            return (TMade)(made ?? (_made[line] = make(from)));
        _made[line] = null;
        return null;
    }

    /// <summary>
    /// The cell for a place in a result of another shape: one row or column serves all, and past the end there is no value.
    /// </summary>
    public CellValue Broadcast(int row, int column)
    {
        if (Rows == 1)
            row = 0;
        if (Columns == 1)
            column = 0;
        return row < Rows && column < Columns ? this[row, column] : CellValue.FromError(CellError.NotAvailable);
    }
}
