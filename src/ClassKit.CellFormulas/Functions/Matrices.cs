using ClassKit.CellFormulas.Budget;
using ClassKit.CellFormulas.Calls;
using ClassKit.CellFormulas.Values;

namespace ClassKit.CellFormulas.Functions;

/// <summary>Matrices, and sums over pairs of numbers (OpenFormula 1.3, 6.5).</summary>
internal static class Matrices
{
    private const int Largest = 100;

    public static readonly FunctionRow[] Rows =
    [
        new("MMULT", 2, 2, "AA", Product),
        new("MDETERM", 1, 1, "A", call => Square(call) is { } matrix ? Eliminate(call.Meter, matrix, null) : false),
        new("MINVERSE", 1, 1, "A", Inverse),
        new("MUNIT", 1, 1, "V", call =>
            call.Integer(0) is var size && size > Largest
                ? CellError.Value
                : Reshaping.Build(call, size, size, (row, column) => CellValue.FromNumber(row == column ? 1 : 0))
        ),
        new("SUMX2MY2", 2, 2, "AA", call => Pairs(call, (x, y) => x * x - y * y)),
        new("SUMX2PY2", 2, 2, "AA", call => Pairs(call, (x, y) => x * x + y * y)),
        new("SUMXMY2", 2, 2, "AA", call => Pairs(call, (x, y) => (x - y) * (x - y))),
    ];

    private static FormulaValue Product(Call call)
    {
        var (left, right) = (Numbers(call, 0), Numbers(call, 1));
        if (call.Failed)
            return call.Failure;
        if (left!.GetLength(1) != right!.GetLength(0))
            return CellError.Value;
        var inner = left.GetLength(1);
        if (call.Run.TooLarge((long)left.GetLength(0) * right.GetLength(1) * inner))
            return CellError.Value;
        return Reshaping.Build(call, left.GetLength(0), right.GetLength(1), (row, column) =>
        {
            var sum = 0.0;
            for (var at = 0; at < inner; at++)
                sum += left[row, at] * right[at, column];
            return CellValue.FromNumber(sum);
        });
    }

    private static FormulaValue Inverse(Call call)
    {
        if (Square(call) is not { } matrix)
            return false;
        var size = matrix.GetLength(0);
        var inverse = new double[size, size];
        for (var at = 0; at < size; at++)
            inverse[at, at] = 1;
        return Eliminate(call.Meter, matrix, inverse) == 0
            ? CellError.Number
            : Reshaping.Build(call, size, size, (row, column) => CellValue.FromNumber(inverse[row, column]));
    }

    /// <summary>
    /// The determinant, by elimination with the largest pivot; what stands beside the matrix goes through the same steps.
    /// </summary>
    private static double Eliminate(Meter meter, double[,] matrix, double[,]? beside)
    {
        var size = matrix.GetLength(0);
        meter.Take((long)size * size * size * (beside is null ? 1 : 2));
        var determinant = 1.0;
        for (var step = 0; step < size; step++)
        {
            var pivot = step;
            for (var row = step + 1; row < size; row++)
            {
                if (Math.Abs(matrix[row, step]) > Math.Abs(matrix[pivot, step]))
                    pivot = row;
            }

            if (matrix[pivot, step] == 0)
                return 0;
            if (pivot != step)
                determinant = -determinant;
            Swap(matrix, pivot, step);
            if (beside is not null)
                Swap(beside, pivot, step);
            determinant *= matrix[step, step];
            for (var row = beside is null ? step + 1 : 0; row < size; row++)
            {
                if (row == step)
                    continue;
                var factor = matrix[row, step] / matrix[step, step];
                for (var column = 0; column < size; column++)
                {
                    matrix[row, column] -= factor * matrix[step, column];
                    if (beside is not null)
                        beside[row, column] -= factor * beside[step, column];
                }
            }

            if (beside is not null)
                Scale(beside, matrix, step);
        }

        return determinant;
    }

    private static void Scale(double[,] beside, double[,] matrix, int row)
    {
        var pivot = matrix[row, row];
        for (var column = 0; column < matrix.GetLength(1); column++)
        {
            matrix[row, column] /= pivot;
            beside[row, column] /= pivot;
        }
    }

    private static void Swap(double[,] matrix, int row, int other)
    {
        for (var column = 0; column < matrix.GetLength(1) && row != other; column++)
            (matrix[row, column], matrix[other, column]) = (matrix[other, column], matrix[row, column]);
    }

    private static double[,]? Square(Call call)
    {
        var matrix = Numbers(call, 0);
        if (!call.Failed && (matrix!.GetLength(0) != matrix.GetLength(1) || matrix.GetLength(0) > Largest))
            call.Fail(CellError.Value);
        return call.Failed ? null : matrix;
    }

    /// <summary>All elements as numbers; anything else is <c>#VALUE!</c>.</summary>
    private static double[,]? Numbers(Call call, int at)
    {
        var array = call.Array(at);
        if (call.Failed || call.Run.TooLarge(array.Count))
            return null;
        var numbers = new double[array.Rows, array.Columns];
        for (var row = 0; row < array.Rows; row++)
        {
            for (var column = 0; column < array.Columns; column++)
            {
                if (array[row, column] is { IsNumber: true } cell)
                    numbers[row, column] = cell.Number;
                else
                    call.Fail(array[row, column] is { IsError: true } error ? error.Error : CellError.Value);
            }
        }

        return numbers;
    }

    /// <summary>Only the places count where both have a number.</summary>
    private static FormulaValue Pairs(Call call, Func<double, double, double> term)
    {
        var (xs, ys) = (call.Array(0), call.Array(1));
        if (call.Failed)
            return call.Failure;
        if (xs.Count != ys.Count)
            return CellError.NotAvailable;
        if (call.Run.TooLarge(Math.Min(xs.Count, Math.Max((long)xs.StoredRows * xs.Columns, (long)ys.StoredRows * ys.Columns))))
            return false;
        var terms = new List<double>();
        for (var at = 0L; at < xs.Count && at < Math.Max((long)xs.StoredRows * xs.Columns, (long)ys.StoredRows * ys.Columns); at++)
        {
            var (x, y) = (xs.At(at), ys.At(at));
            if (x.IsError)
                return x;
            if (y.IsError)
                return y;
            if (x.IsNumber && y.IsNumber)
                terms.Add(term(x.Number, y.Number));
        }

        return terms.Count == 0 ? CellError.DivideByZero : Summation.Of(terms);
    }
}
