using ClassKit.CellFormulas.Values;

namespace ClassKit.CellFormulas.Calls;

/// <summary>Reads what references hold, as one cell, as a rectangle or as a list.</summary>
internal sealed class Rectangles(Run run, CellSource cells)
{
    /// <summary>The one cell of a reference that lies in the row or column of the formula.</summary>
    /// <remarks>OpenFormula 1.3, 6.3.3 (implied intersection).</remarks>
    public CellValue Single(Reference reference)
    {
        if (reference.Areas.Length > 1)
            return CellValue.FromError(CellError.Value);
        var area = reference.First;
        if (area.IsCell)
            return cells.Read(area.Sheet, area.Top, area.Left);
        if (cells.Place is not var (row, column))
            return CellValue.FromError(CellError.Value);
        if (area.Columns == 1 && row >= area.Top && row <= area.Bottom)
            return cells.Read(area.Sheet, row, area.Left);
        if (area.Rows == 1 && column >= area.Left && column <= area.Right)
            return cells.Read(area.Sheet, area.Top, column);
        return CellValue.FromError(CellError.Value);
    }

    /// <summary>Any value as a rectangle.</summary>
    public ArrayValue Array(FormulaValue value)
    {
        if (value.Array is { } array)
            return array;
        if (value.Reference is not { } reference)
            return new ArrayValue(run.Meter, 1, 1, [value.Scalar]);
        return reference.Areas.Length == 1
            ? Array(reference.First)
            : new ArrayValue(run.Meter, 1, 1, [CellValue.FromError(CellError.Value)]);
    }

    /// <summary>All filled cells of a value, in reading order.</summary>
    public void Collect(FormulaValue value, List<CellValue> into)
    {
        if (value.Reference is { } reference)
        {
            foreach (var area in reference.Areas)
                cells.Collect(area, into);
            return;
        }

        if (value.Array is not { } array)
        {
            if (!value.Scalar.IsBlank)
                into.Add(value.Scalar);
            return;
        }

        for (var row = 0; row < array.StoredRows; row++)
        {
            for (var column = 0; column < array.StoredColumns; column++)
            {
                if (array[row, column] is { IsBlank: false } cell)
                    into.Add(cell);
            }
        }
    }

    /// <summary>The values of an area.</summary>
    public ArrayValue Array(Area area)
    {
        if (cells.Recall(area) is { } known)
            return known;
        if (cells.Used(area) is not { } used)
            return new(run.Meter, area.Rows, area.Columns, [], 0, 0);

        // Rows and columns before the first used one are stored, so that places stay what they are.
        var (rows, columns) = (used.Bottom - area.Top + 1, used.Right - area.Left + 1);
        if (run.TooLarge((long)rows * columns))
            return new(run.Meter, area.Rows, area.Columns, [], 0, 0);
        var values = new CellValue[rows * columns];
        for (var row = used.Top; row <= used.Bottom && !run.Halted; row++)
        {
            for (var column = used.Left; column <= used.Right; column++)
                values[(row - area.Top) * columns + (column - area.Left)] = cells.Read(area.Sheet, row, column);
        }

        var array = new ArrayValue(run.Meter, area.Rows, area.Columns, values, rows, columns);
        if (!run.Halted)
            cells.Remember(area, array);
        return array;
    }
}
