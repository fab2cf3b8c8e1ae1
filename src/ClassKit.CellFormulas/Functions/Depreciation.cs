using ClassKit.CellFormulas.Calls;
using ClassKit.CellFormulas.Values;

namespace ClassKit.CellFormulas.Functions;

/// <summary>How equipment loses its worth (OpenFormula 1.3, 6.12).</summary>
internal static class Depreciation
{
    private const double MostPeriods = 100_000;

    public static readonly FunctionRow[] Rows =
    [
        new("SYD", 4, 4, "VVVV", SumOfYears),
        new("DB", 4, 5, "VVVVV", Declining),
        new("DDB", 4, 5, "VVVVV", DoublyDeclining),
    ];

    private static FormulaValue SumOfYears(Call call)
    {
        var (cost, salvage, life, period) = (call.Number(0), call.Number(1), call.Number(2), call.Number(3));
        if (call.Failed)
            return call.Failure;
        return life <= 0 || period < 1 || period > life
            ? CellError.Number
            : (cost - salvage) * (life - period + 1) * 2 / (life * (life + 1));
    }

    /// <summary>A fixed rate, rounded to three decimals, of what is left; the first year may have fewer months.</summary>
    private static FormulaValue Declining(Call call)
    {
        var (cost, salvage, life, period, months) = (
            call.Number(0),
            call.Number(1),
            Numbers.Truncate(call.Number(2)),
            Numbers.Truncate(call.Number(3)),
            Numbers.Truncate(call.Number(4, 12))
        );
        if (call.Failed)
            return call.Failure;
        if (
            cost < 0
            || salvage < 0
            || life < 1
            || period < 1
            || months is < 1 or > 12
            || period > life + (months < 12 ? 1 : 0)
            || life > MostPeriods
        )
            return CellError.Number;
        if (cost == 0)
            return 0;
        var rate = Numbers.Round(1 - Math.Pow(salvage / cost, 1 / life), 3);
        var loss = cost * rate * months / 12;
        var lost = loss;
        call.Meter.Take(2 * (long)period);
        for (var at = 2; at <= period; at++)
        {
            loss = (cost - lost) * rate * (at > life ? (12 - months) / 12 : 1);
            lost += loss;
        }

        return loss;
    }

    /// <summary>A multiple of the straight rate of what is left, never below the salvage value.</summary>
    private static FormulaValue DoublyDeclining(Call call)
    {
        var (cost, salvage, life, period, factor) = (call.Number(0), call.Number(1), call.Number(2), call.Number(3), call.Number(4, 2));
        if (call.Failed)
            return call.Failure;
        if (cost < 0 || salvage < 0 || life <= 0 || period < 1 || period > life || factor <= 0)
            return CellError.Number;
        var rate = Math.Min(1, factor / life);
        var before = cost * Math.Pow(1 - rate, period - 1);
        return Math.Max(0, Math.Min(before * rate, before - salvage));
    }
}
