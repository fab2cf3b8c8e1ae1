using ClassKit.CellFormulas.Evaluating;
using ClassKit.CellFormulas.Values;

namespace ClassKit.CellFormulas.Functions;

/// <summary>Functions that give rounder numbers.</summary>
internal static class Rounding
{
    public static readonly FunctionRow[] Rows =
    [
        new("INT", 1, 1, "V", call => Numbers.Floor(call.Number(0))),
        new("TRUNC", 1, 2, "VV", call => Numbers.RoundDown(call.Number(0), call.Integer(1, 0))),
        new("ROUND", 1, 2, "VV", call => Numbers.Round(call.Number(0), call.Integer(1, 0))),
        new("ROUNDUP", 1, 2, "VV", call => Numbers.RoundUp(call.Number(0), call.Integer(1, 0))),
        new("ROUNDDOWN", 1, 2, "VV", call => Numbers.RoundDown(call.Number(0), call.Integer(1, 0))),
        new("CEILING", 1, 2, "VV", Ceiling),
        new("FLOOR", 1, 2, "VV", Floor),
        new("MROUND", 2, 2, "VV", MRound),
        new("EVEN", 1, 1, "V", call => AwayFromZero(call.Number(0), x => Numbers.Ceiling(x / 2) * 2)),
        new("ODD", 1, 1, "V", call => AwayFromZero(call.Number(0), x => Numbers.Ceiling((x - 1) / 2) * 2 + 1, zero: 1)),
    ];

    private static double AwayFromZero(double number, Func<double, double> up, double zero = 0) =>
        number == 0 ? zero : Math.Sign(number) * Math.Max(zero, up(Math.Abs(number)));

    /// <summary>Up to a multiple; a negative number with a negative step moves away from zero, with a positive one towards it.</summary>
    private static FormulaValue Ceiling(Call call)
    {
        var number = call.Number(0);
        var step = call.Number(1, number < 0 ? -1 : 1);
        if (number == 0 || step == 0) return 0;
        if (number > 0 && step < 0) return CellError.Number;
        return Numbers.Ceiling(number / step) * step;
    }

    private static FormulaValue Floor(Call call)
    {
        var number = call.Number(0);
        var step = call.Number(1, number < 0 ? -1 : 1);
        if (number == 0) return 0;
        if (step == 0) return CellError.DivideByZero;
        if (number > 0 && step < 0) return CellError.Number;
        return Numbers.Floor(number / step) * step;
    }

    /// <summary>To the nearest multiple, a tie to the greater (OpenFormula 1.3, 6.17.6).</summary>
    private static FormulaValue MRound(Call call)
    {
        var (number, step) = (call.Number(0), call.Number(1));
        if (number == 0 || step == 0) return 0;
        if (number < 0 != step < 0) return CellError.Number;
        return Numbers.Floor(number / step + 0.5) * step;
    }
}
