using ClassKit.CellFormulas.Calls;
using ClassKit.CellFormulas.Values;

namespace ClassKit.CellFormulas.Functions;

/// <summary>Functions that give rounder numbers (OpenFormula 1.3, 6.17).</summary>
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
        new("CEILING.MATH", 1, 3, "VVV", CeilingMath),
        new("FLOOR.MATH", 1, 3, "VVV", FloorMath),
        new("CEILING.PRECISE", 1, 2, "VV", call => UpTo(call.Number(0), Math.Abs(call.Number(1, 1)))),
        new("ISO.CEILING", 1, 2, "VV", call => UpTo(call.Number(0), Math.Abs(call.Number(1, 1)))),
        new("FLOOR.PRECISE", 1, 2, "VV", call => DownTo(call.Number(0), Math.Abs(call.Number(1, 1)))),
        new("MROUND", 2, 2, "VV", MRound),
        new("EVEN", 1, 1, "V", call => AwayFromZero(call.Number(0), x => Numbers.Ceiling(x / 2) * 2)),
        new("ODD", 1, 1, "V", call => AwayFromZero(call.Number(0), x => Numbers.Ceiling((x - 1) / 2) * 2 + 1, zero: 1)),
    ];

    private static double AwayFromZero(double number, Func<double, double> up, double zero = 0) =>
        number == 0 ? zero : Math.Sign(number) * Math.Max(zero, up(Math.Abs(number)));

    private static double UpTo(double number, double step) => step == 0 ? 0 : Numbers.Ceiling(number / step) * step;

    private static double DownTo(double number, double step) => step == 0 ? 0 : Numbers.Floor(number / step) * step;

    /// <summary>Up to a multiple; a negative number with a negative step moves away from zero, with a positive one towards it.</summary>
    private static FormulaValue Ceiling(Call call)
    {
        var number = call.Number(0);
        var step = call.Number(1, number < 0 ? -1 : 1);
        return number > 0 && step < 0 ? CellError.Number
            : number == 0 ? 0
            : UpTo(number, step);
    }

    private static FormulaValue Floor(Call call)
    {
        var number = call.Number(0);
        var step = call.Number(1, number < 0 ? -1 : 1);
        if (number == 0)
            return 0;
        if (step == 0)
            return CellError.DivideByZero;
        return number > 0 && step < 0 ? CellError.Number : DownTo(number, step);
    }

    private static FormulaValue CeilingMath(Call call)
    {
        var (number, step, away) = (call.Number(0), Math.Abs(call.Number(1, 1)), call.Number(2, 0) != 0);
        return number < 0 && away ? -UpTo(-number, step) : UpTo(number, step);
    }

    private static FormulaValue FloorMath(Call call)
    {
        var (number, step, towards) = (call.Number(0), Math.Abs(call.Number(1, 1)), call.Number(2, 0) != 0);
        return number < 0 && towards ? -DownTo(-number, step) : DownTo(number, step);
    }

    /// <summary>To the nearest multiple; a tie goes away from zero.</summary>
    private static FormulaValue MRound(Call call)
    {
        var (number, step) = (call.Number(0), call.Number(1));
        if (number == 0 || step == 0)
            return 0;
        return number < 0 != step < 0 ? CellError.Number : Numbers.Floor(number / step + 0.5) * step;
    }
}
