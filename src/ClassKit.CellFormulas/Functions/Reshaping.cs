using ClassKit.CellFormulas.Calls;
using ClassKit.CellFormulas.Obstacles;
using ClassKit.CellFormulas.Sheets;
using ClassKit.CellFormulas.Values;

namespace ClassKit.CellFormulas.Functions;

/// <summary>Arrays put together, cut and laid out anew. Newer than both standards: Microsoft's function reference.</summary>
internal static class Reshaping
{
    public static readonly FunctionRow[] Rows =
    [
        new("SEQUENCE", 1, 4, "VVVV", Sequence),
        new("HSTACK", 1, FunctionRow.Many, "*A", call => Stack(call, sideways: true)),
        new("VSTACK", 1, FunctionRow.Many, "*A", call => Stack(call, sideways: false)),
        new("TAKE", 2, 3, "AVV", Take),
        new("DROP", 2, 3, "AVV", Drop),
        new("CHOOSEROWS", 2, FunctionRow.Many, "A*A", call => Chosen(call, rows: true)),
        new("CHOOSECOLS", 2, FunctionRow.Many, "A*A", call => Chosen(call, rows: false)),
        new("TOCOL", 1, 3, "AVV", call => Line(call, isColumn: true)),
        new("TOROW", 1, 3, "AVV", call => Line(call, isColumn: false)),
        new("WRAPROWS", 2, 3, "AVV", call => Wrap(call, byRow: true)),
        new("WRAPCOLS", 2, 3, "AVV", call => Wrap(call, byRow: false)),
        new("EXPAND", 2, 4, "AVVV", Expand),
    ];

    /// <summary>An array whose elements a function of their place gives; null if it is too large.</summary>
    public static FormulaValue Build(Call call, long rows, long columns, Func<int, int, CellValue> element)
    {
        if (call.Failed)
            return call.Failure;
        if (rows < 1 || columns < 1)
            return CellError.Value;
        if (rows > CellAddress.LastRow || columns > CellAddress.LastColumn || call.Run.TooLarge(rows * columns))
            return call.Run.Unsupported(new Obstacle.ArrayBeyondSheet());
        var array = new ArrayValue(call.Meter, (int)rows, (int)columns);
        for (var row = 0; row < rows; row++)
        {
            for (var column = 0; column < columns; column++)
                array[row, column] = element(row, column);
        }

        return array;
    }

    private static FormulaValue Sequence(Call call)
    {
        var (rows, columns) = (call.Integer(0, 1), call.Integer(1, 1));
        var (start, step) = (call.Number(2, 1), call.Number(3, 1));
        return Build(call, rows, columns, (row, column) => CellValue.FromNumber(start + step * ((double)row * columns + column)));
    }

    private static FormulaValue Stack(Call call, bool sideways)
    {
        var arrays = Enumerable.Range(0, call.Count).Select(call.Array).ToList();
        if (call.Failed)
            return call.Failure;
        var rows = sideways ? arrays.Max(array => array.Rows) : arrays.Sum(array => (long)array.Rows);
        var columns = sideways ? arrays.Sum(array => (long)array.Columns) : arrays.Max(array => array.Columns);
        var starts = new List<int>();
        var next = 0L;
        foreach (var array in arrays)
        {
            starts.Add((int)Math.Min(next, int.MaxValue));
            next += sideways ? array.Columns : array.Rows;
        }

        return Build(call, rows, columns, (row, column) =>
        {
            var along = sideways ? column : row;
            var found = starts.BinarySearch(along);
            var which = found >= 0 ? found : ~found - 1;
            var (array, at) = (arrays[which], along - starts[which]);
            var (r, c) = sideways ? (row, at) : (at, column);
            return r < array.Rows && c < array.Columns ? array[r, c] : CellValue.FromError(CellError.NotAvailable);
        });
    }

    /// <summary>So many rows and columns from the start, or from the end where negative.</summary>
    private static FormulaValue Take(Call call)
    {
        var array = call.Array(0);
        var (rows, columns) = (call.Integer(1, array.Rows), call.Integer(2, array.Columns));
        return Cut(call, array, Kept(rows, array.Rows), Kept(columns, array.Columns));

        static (int From, int Count) Kept(int asked, int all) =>
            asked >= 0 ? (0, Math.Min(asked, all)) : (Math.Max(0, all + Math.Max(asked, -all)), Math.Min(-Math.Max(asked, -all), all));
    }

    private static FormulaValue Drop(Call call)
    {
        var array = call.Array(0);
        var (rows, columns) = (call.Integer(1, 0), call.Integer(2, 0));
        return Cut(call, array, Left(rows, array.Rows), Left(columns, array.Columns));

        static (int From, int Count) Left(int dropped, int all) =>
            dropped >= 0 ? (Math.Min(dropped, all), all - Math.Min(dropped, all)) : (0, all - Math.Min(-Math.Max(dropped, -all), all));
    }

    private static FormulaValue Cut(Call call, ArrayValue array, (int From, int Count) rows, (int From, int Count) columns) =>
        Build(call, rows.Count, columns.Count, (row, column) => array[rows.From + row, columns.From + column]);

    private static FormulaValue Chosen(Call call, bool rows)
    {
        var array = call.Array(0);
        var all = rows ? array.Rows : array.Columns;
        var chosen = new List<int>();
        for (var at = 1; at < call.Count && !call.Failed; at++)
        {
            foreach (var cell in call.Filled(at))
            {
                if (!Coercion.TryNumber(cell, call.Meter, out var number, out var error))
                    call.Fail(error);
                var index = Numbers.Truncate(number);
                if (index == 0 || Math.Abs(index) > all)
                    call.Fail(CellError.Value);
                else
                    chosen.Add(index > 0 ? (int)index - 1 : all + (int)index);
            }
        }

        return rows
            ? Build(call, chosen.Count, array.Columns, (row, column) => array[chosen[row], column])
            : Build(call, array.Rows, chosen.Count, (row, column) => array[row, chosen[column]]);
    }

    /// <summary>All elements in one row or column; blanks, errors or both left out if asked.</summary>
    private static FormulaValue Line(Call call, bool isColumn)
    {
        var array = call.Array(0);
        var (ignored, byColumn) = (call.Integer(1, 0), call.Logical(2, false));
        if (call.Failed || ignored is < 0 or > 3 || call.Run.TooLarge(array.Count))
            return CellError.Value;
        var elements = new List<CellValue>();
        for (var i = 0L; i < array.Count; i++)
        {
            var cell = byColumn ? array[(int)(i % array.Rows), (int)(i / array.Rows)] : array.At(i);
            if ((ignored & 1) != 0 && cell.IsBlank)
                continue;
            if ((ignored & 2) != 0 && cell.IsError)
                continue;
            elements.Add(cell);
        }

        return isColumn
            ? Build(call, elements.Count, 1, (row, _) => elements[row])
            : Build(call, 1, elements.Count, (_, column) => elements[column]);
    }

    private static FormulaValue Wrap(Call call, bool byRow)
    {
        if (Vector.Of(call.Array(0)) is not { } line)
            return CellError.Value;
        var length = call.Integer(1);
        if (call.Failed)
            return call.Failure;
        if (length < 1)
            return CellError.Number;
        var padding = call.IsMissing(2) ? CellValue.FromError(CellError.NotAvailable) : call.Any(2);
        var lines = (line.Length + (long)length - 1) / length;
        var across = Math.Min(length, line.Length);
        return byRow
            ? Build(call, lines, across, (row, column) => At((long)row * length + column))
            : Build(call, across, lines, (row, column) => At((long)column * length + row));

        CellValue At(long index) => index < line.Length ? line[(int)index] : padding;
    }

    private static FormulaValue Expand(Call call)
    {
        var array = call.Array(0);
        var (rows, columns) = (call.Integer(1, array.Rows), call.Integer(2, array.Columns));
        var padding = call.IsMissing(3) ? CellValue.FromError(CellError.NotAvailable) : call.Any(3);
        if (rows < array.Rows || columns < array.Columns)
            return call.Fail(CellError.Value);
        return Build(call, rows, columns, (row, column) => row < array.Rows && column < array.Columns ? array[row, column] : padding);
    }
}
