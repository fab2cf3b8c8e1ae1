using ClassKit.CellFormulas.Calls;
using ClassKit.CellFormulas.Operations;
using ClassKit.CellFormulas.Values;

namespace ClassKit.CellFormulas.Functions;

/// <summary>Sums, products, powers, logarithms and signs (OpenFormula 1.3, 6.16).</summary>
internal static class Arithmetic
{
    public static readonly FunctionRow[] Rows =
    [
        new("ABS", 1, 1, "V", call => Math.Abs(call.Number(0))),
        new("SIGN", 1, 1, "V", call => Math.Sign(call.Number(0))),
        new("SUM", 1, FunctionRow.Many, "*R", call => Summation.Of(call.NumbersFrom(0))),
        new("SUMSQ", 1, FunctionRow.Many, "*R", call => Summation.Of(call.NumbersFrom(0), x => x * x)),
        new("PRODUCT", 1, FunctionRow.Many, "*R", Product),
        new("SUMPRODUCT", 1, FunctionRow.Many, "*A", SumProduct),
        new("POWER", 2, 2, "VV", call => Operators.Power(call.Number(0), call.Number(1))),
        new("SQRT", 1, 1, "V", call => call.Number(0) is var x && x < 0 ? CellError.Number : Math.Sqrt(x)),
        new("SQRTPI", 1, 1, "V", call => call.Number(0) is var x && x < 0 ? CellError.Number : Math.Sqrt(x * Math.PI)),
        new("EXP", 1, 1, "V", call => Math.Exp(call.Number(0))),
        new("LN", 1, 1, "V", call => call.Number(0) is var x && x <= 0 ? CellError.Number : Math.Log(x)),
        new("LOG10", 1, 1, "V", call => call.Number(0) is var x && x <= 0 ? CellError.Number : Math.Log10(x)),
        new("LOG", 1, 2, "VV", Log),
        new("PI", 0, 0, "", _ => Math.PI),
        new("MOD", 2, 2, "VV", Mod),
        new("QUOTIENT", 2, 2, "VV", Quotient),
    ];

    private static FormulaValue Product(Call call)
    {
        var numbers = call.NumbersFrom(0);
        return numbers.Count == 0 ? 0 : numbers.Aggregate(1.0, (product, number) => product * number);
    }

    /// <summary>
    /// Products of elements in the same place, added up; what is no number counts as 0, but a text by itself is <c>#VALUE!</c>.
    /// </summary>
    private static FormulaValue SumProduct(Call call)
    {
        var arrays = new ArrayValue[call.Count];
        for (var at = 0; at < arrays.Length; at++)
        {
            arrays[at] = call.Array(at);
            if (arrays[at].Rows != arrays[0].Rows || arrays[at].Columns != arrays[0].Columns)
                call.Fail(CellError.Value);
        }

        // Outside what is stored everywhere, one factor is blank and the product 0.
        var (rows, columns) = (arrays.Min(array => array.StoredRows), arrays.Min(array => array.StoredColumns));
        if (Array.Exists(arrays, array => array.Count == 1 && array[0, 0].IsText))
            return call.Fail(CellError.Value);
        var products = new List<double>();
        foreach (var array in arrays)
            FailOnError(call, array);
        for (var row = 0; row < rows && !call.Failed; row++)
        {
            for (var column = 0; column < columns; column++)
            {
                var product = 1.0;
                foreach (var array in arrays)
                    product *= array[row, column] is { IsNumber: true } cell ? cell.Number : 0;
                products.Add(product);
            }
        }

        return Summation.Of(products);
    }

    private static void FailOnError(Call call, ArrayValue array)
    {
        for (var row = 0; row < array.StoredRows; row++)
        {
            for (var column = 0; column < array.StoredColumns; column++)
            {
                if (array[row, column] is { IsError: true } cell)
                    call.Fail(cell.Error);
            }
        }
    }

    private static FormulaValue Log(Call call)
    {
        var (number, root) = (call.Number(0), call.Number(1, 10));
        if (number <= 0 || root <= 0)
            return CellError.Number;
        if (root == 1)
            return CellError.DivideByZero;
        return root == 10 ? Math.Log10(number)
            : root == 2 ? Math.Log2(number)
            : Math.Log(number) / Math.Log(root);
    }

    /// <summary>The remainder takes the divisor's sign.</summary>
    private static FormulaValue Mod(Call call)
    {
        var (dividend, divisor) = (call.Number(0), call.Number(1));
        if (divisor == 0)
            return CellError.DivideByZero;
        if (IsWhole(dividend) && IsWhole(divisor))
            return dividend % divisor is var rest && rest != 0 && rest < 0 != divisor < 0 ? rest + divisor : rest;
        var quotient = Numbers.Floor(dividend / divisor);
        return Numbers.Add(dividend, -(divisor * quotient));
    }

    private static bool IsWhole(double number) => number == Math.Floor(number);

    private static FormulaValue Quotient(Call call)
    {
        var (dividend, divisor) = (call.Number(0), call.Number(1));
        return divisor == 0 ? CellError.DivideByZero : Numbers.Truncate(dividend / divisor);
    }
}
