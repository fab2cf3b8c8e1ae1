using ClassKit.CellFormulas.Calls;
using ClassKit.CellFormulas.Values;

namespace ClassKit.CellFormulas.Functions;

/// <summary>Averages, extremes, counts and spreads (OpenFormula 1.3, 6.18).</summary>
internal static class Statistics
{
    public static readonly FunctionRow[] Rows =
    [
        Of("AVERAGE", numbers => numbers.Count == 0 ? CellError.DivideByZero : Mean(numbers)),
        Of("MIN", numbers => numbers.Count == 0 ? 0 : numbers.Min()),
        Of("MAX", numbers => numbers.Count == 0 ? 0 : numbers.Max()),
        OfAll("AVERAGEA", numbers => numbers.Count == 0 ? CellError.DivideByZero : Mean(numbers)),
        OfAll("MINA", numbers => numbers.Count == 0 ? 0 : numbers.Min()),
        OfAll("MAXA", numbers => numbers.Count == 0 ? 0 : numbers.Max()),
        Of("STDEV", numbers => Root(Variance(numbers, 1))),
        Of("STDEV.S", numbers => Root(Variance(numbers, 1))),
        Of("STDEVP", numbers => Root(Variance(numbers, 0))),
        Of("STDEV.P", numbers => Root(Variance(numbers, 0))),
        OfAll("STDEVA", numbers => Root(Variance(numbers, 1))),
        OfAll("STDEVPA", numbers => Root(Variance(numbers, 0))),
        Of("VAR", numbers => Variance(numbers, 1)),
        Of("VAR.S", numbers => Variance(numbers, 1)),
        Of("VARP", numbers => Variance(numbers, 0)),
        Of("VAR.P", numbers => Variance(numbers, 0)),
        OfAll("VARA", numbers => Variance(numbers, 1)),
        OfAll("VARPA", numbers => Variance(numbers, 0)),
        Of("DEVSQ", numbers => numbers.Count == 0 ? CellError.Number : SquaresAround(numbers, Mean(numbers))),
        Of("AVEDEV", numbers => numbers.Count == 0 ? CellError.Number
            : Mean(numbers) is var mean ? Summation.Of(numbers, x => Math.Abs(x - mean)) / numbers.Count
            : 0),
        Of("GEOMEAN", numbers =>
            numbers.Count == 0 || numbers.Min() <= 0 ? CellError.Number : Math.Exp(Summation.Of(numbers, Math.Log) / numbers.Count)
        ),
        Of("HARMEAN", numbers =>
            numbers.Count == 0 || numbers.Min() <= 0 ? CellError.Number : numbers.Count / Summation.Of(numbers, x => 1 / x)
        ),
        new("COUNT", 1, FunctionRow.Many, "*R", Count, FunctionTraits.SeesErrors),
        new("COUNTA", 1, FunctionRow.Many, "*R", CountA, FunctionTraits.SeesErrors),
        new("COUNTBLANK", 1, 1, "R", CountBlank),
    ];

    public static double Mean(List<double> numbers) => Summation.Of(numbers) / numbers.Count;

    public static double SquaresAround(List<double> numbers, double mean) =>
        Summation.Of(numbers, x => Numbers.Add(x, -mean) is var apart ? apart * apart : 0);

    private static FunctionRow Of(string name, Func<List<double>, FormulaValue> statistic) =>
        new(name, 1, FunctionRow.Many, "*R", call => statistic(call.NumbersFrom(0)));

    /// <summary>The functions ending in A see texts in references as 0 and logicals as 0 or 1.</summary>
    private static FunctionRow OfAll(string name, Func<List<double>, FormulaValue> statistic) =>
        new(name, 1, FunctionRow.Many, "*R", call => statistic(AllFrom(call)));

    private static List<double> AllFrom(Call call)
    {
        var numbers = new List<double>();
        for (var at = 0; at < call.Count && !call.Failed; at++)
        {
            if (call.Value(at).IsScalar)
            {
                numbers.Add(call.Number(at));
                continue;
            }

            foreach (var cell in call.Filled(at))
            {
                if (cell.IsError)
                    call.Fail(cell.Error);
                else
                    numbers.Add(cell.IsText || !Coercion.TryNumber(cell, call.Meter, out var number, out _) ? 0 : number);
            }
        }

        return numbers;
    }

    public static FormulaValue Variance(List<double> numbers, int less) =>
        numbers.Count <= less ? CellError.DivideByZero : SquaresAround(numbers, Mean(numbers)) / (numbers.Count - less);

    public static FormulaValue Root(FormulaValue variance) => variance.IsError ? variance : Math.Sqrt(variance.Scalar.Number);

    /// <summary>Counts numbers; a value written into the argument counts if it can become one.</summary>
    private static FormulaValue Count(Call call)
    {
        var count = 0;
        for (var at = 0; at < call.Count; at++)
        {
            if (call.Value(at).IsScalar)
                count += !call.Any(at).IsError && Coercion.TryNumber(call.Any(at), call.Meter, out _, out _) ? 1 : 0;
            else
                count += call.Filled(at).Count(cell => cell.IsNumber);
        }

        return count;
    }

    private static FormulaValue CountA(Call call)
    {
        var count = 0;
        for (var at = 0; at < call.Count; at++)
            count += call.Value(at).IsScalar ? 1 : call.Filled(at).Count;
        return count;
    }

    private static FormulaValue CountBlank(Call call)
    {
        if (call.Area(0) is not { } area)
            return CellError.Value;
        var filled = call.Filled(0).Count(cell => !cell.IsText || cell.Text.Length > 0);
        return (long)area.Rows * area.Columns - filled;
    }
}
