using ClassKit.CellFormulas.Evaluating;
using ClassKit.CellFormulas.Values;

namespace ClassKit.CellFormulas.Functions;

/// <summary>Averages, extremes and counts.</summary>
internal static class Statistics
{
    public static readonly FunctionRow[] Rows =
    [
        new("AVERAGE", 1, FunctionRow.Many, "*R", Average),
        new("MIN", 1, FunctionRow.Many, "*R", call => Extreme(call, numbers => numbers.Min())),
        new("MAX", 1, FunctionRow.Many, "*R", call => Extreme(call, numbers => numbers.Max())),
    ];

    private static FormulaValue Average(Call call)
    {
        var numbers = call.NumbersFrom(0);
        return numbers.Count == 0 ? CellError.DivideByZero : Summation.Of(numbers) / numbers.Count;
    }

    private static FormulaValue Extreme(Call call, Func<List<double>, double> pick)
    {
        var numbers = call.NumbersFrom(0);
        return numbers.Count == 0 ? 0 : pick(numbers);
    }
}
