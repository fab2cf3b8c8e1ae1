using ClassKit.CellFormulas.Evaluating;
using ClassKit.CellFormulas.Values;

namespace ClassKit.CellFormulas.Functions;

/// <summary>Sums, products, powers and signs.</summary>
internal static class Arithmetic
{
    public static readonly FunctionRow[] Rows =
    [
        new("ABS", 1, 1, "V", call => Math.Abs(call.Number(0))),
        new("SIGN", 1, 1, "V", call => Math.Sign(call.Number(0))),
        new("SUM", 1, FunctionRow.Many, "*R", call => Summation.Of(call.NumbersFrom(0))),
        new("SUMSQ", 1, FunctionRow.Many, "*R", call => Summation.Of(call.NumbersFrom(0), x => x * x)),
        new("PRODUCT", 1, FunctionRow.Many, "*R", Product),
        new("POWER", 2, 2, "VV", call => Operators.Power(call.Number(0), call.Number(1))),
        new("SQRT", 1, 1, "V", Sqrt),
        new("MOD", 2, 2, "VV", Mod),
        new("QUOTIENT", 2, 2, "VV", Quotient),
    ];

    private static FormulaValue Product(Call call)
    {
        var numbers = call.NumbersFrom(0);
        return numbers.Count == 0 ? 0 : numbers.Aggregate(1.0, (product, number) => product * number);
    }

    private static FormulaValue Sqrt(Call call)
    {
        var number = call.Number(0);
        return number < 0 ? CellError.Number : Math.Sqrt(number);
    }

    /// <summary>The remainder takes the divisor's sign (OpenFormula 1.3, 6.16.39).</summary>
    private static FormulaValue Mod(Call call)
    {
        var (dividend, divisor) = (call.Number(0), call.Number(1));
        if (divisor == 0) return CellError.DivideByZero;
        var quotient = Numbers.Floor(dividend / divisor);
        return Numbers.Add(dividend, -(divisor * quotient));
    }

    private static FormulaValue Quotient(Call call)
    {
        var (dividend, divisor) = (call.Number(0), call.Number(1));
        return divisor == 0 ? CellError.DivideByZero : Numbers.Truncate(dividend / divisor);
    }
}
