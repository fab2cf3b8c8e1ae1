using ClassKit.CellFormulas.Budget;
using ClassKit.CellFormulas.Calls;
using ClassKit.CellFormulas.Operations;
using ClassKit.CellFormulas.Syntax;
using ClassKit.CellFormulas.Values;

namespace ClassKit.CellFormulas.Evaluating;

/// <summary>Operators on single values and, element by element, on arrays.</summary>
internal sealed class Elementwise(Run run, Rectangles rectangles)
{
    public FormulaValue Compute(BinaryOperator op, FormulaValue left, FormulaValue right)
    {
        if (left.IsScalar && right.IsScalar)
        {
            var value = Operators.Apply(op, left.Scalar, right.Scalar, run.Meter, run.Limits.TextLength, run.Dates);
            run.Meter.TakeForMade(value);
            return value;
        }

        var (a, b) = (rectangles.Array(left), rectangles.Array(right));
        var (rows, columns) = (Math.Max(a.Rows, b.Rows), Math.Max(a.Columns, b.Columns));
        if (run.TooLarge((long)rows * columns))
            return CellError.Value;
        var result = new ArrayValue(run.Meter, rows, columns);
        for (var row = 0; row < rows && !run.Halted; row++)
        {
            for (var column = 0; column < columns && !run.Halted; column++)
            {
                var value = Operators.Apply(
                    op,
                    a.Broadcast(row, column),
                    b.Broadcast(row, column),
                    run.Meter,
                    run.Limits.TextLength,
                    run.Dates
                );
                run.Meter.TakeForMade(value);
                result[row, column] = value;
            }
        }

        return result;
    }

    /// <summary>Applies an operation to a value or to each element.</summary>
    public FormulaValue Map(FormulaValue value, Func<CellValue, Meter, CellValue> operation)
    {
        if (value.Array is not { } array)
            return operation(value.Scalar, run.Meter);
        if (run.TooLarge(array.Count))
            return CellError.Value;
        var result = new ArrayValue(run.Meter, array.Rows, array.Columns);
        for (var row = 0; row < array.Rows; row++)
        {
            for (var column = 0; column < array.Columns; column++)
                result[row, column] = operation(array[row, column], run.Meter);
        }

        return result;
    }
}
