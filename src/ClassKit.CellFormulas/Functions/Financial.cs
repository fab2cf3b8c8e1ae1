using ClassKit.CellFormulas.Calls;
using ClassKit.CellFormulas.Values;

namespace ClassKit.CellFormulas.Functions;

/// <summary>Loans and savings with equal payments (OpenFormula 1.3, 6.12). Money paid out is negative.</summary>
internal static class Financial
{
    /// <summary>Below this rate, powers lose more digits than the second order of the series leaves out.</summary>
    private const double Tiny = 1e-9;

    public static readonly FunctionRow[] Rows =
    [
        new("PMT", 3, 5, "VVVVV", call => Payment(call.Number(0), call.Number(1), call.Number(2), call.Number(3, 0), Due(call, 4))),
        new("PV", 3, 5, "VVVVV", call => PresentValue(call.Number(0), call.Number(1), call.Number(2), call.Number(3, 0), Due(call, 4))),
        new("FV", 3, 5, "VVVVV", call => FutureValue(call.Number(0), call.Number(1), call.Number(2), call.Number(3, 0), Due(call, 4))),
        new("NPER", 3, 5, "VVVVV", call => Periods(call.Number(0), call.Number(1), call.Number(2), call.Number(3, 0), Due(call, 4))),
        new("RATE", 3, 6, "VVVVVV", Rate),
        new("NPV", 2, FunctionRow.Many, "V*R", NetPresentValue),
        new("SLN", 3, 3, "VVV", call =>
            call.Number(2) is var life && life == 0 ? CellError.DivideByZero : (call.Number(0) - call.Number(1)) / life
        ),
    ];

    /// <summary>1 for payments at the beginning of a period.</summary>
    public static double Due(Call call, int at) => call.Number(at, 0) != 0 ? 1 : 0;

    /// <summary>What one unit paid each period is worth at the end.</summary>
    public static double Annuity(double rate, double periods, double due) =>
        (Math.Abs(rate) < Tiny ? periods * (1 + (periods - 1) / 2 * rate) : (Math.Pow(1 + rate, periods) - 1) / rate) * (1 + rate * due);

    public static FormulaValue Payment(double rate, double periods, double present, double future, double due) =>
        periods == 0 ? CellError.Number : -(present * Math.Pow(1 + rate, periods) + future) / Annuity(rate, periods, due);

    private static FormulaValue PresentValue(double rate, double periods, double payment, double future, double due) =>
        -(future + payment * Annuity(rate, periods, due)) / Math.Pow(1 + rate, periods);

    public static FormulaValue FutureValue(double rate, double periods, double payment, double present, double due) =>
        -(present * Math.Pow(1 + rate, periods) + payment * Annuity(rate, periods, due));

    private static FormulaValue Periods(double rate, double payment, double present, double future, double due)
    {
        if (rate == 0)
            return payment == 0 ? CellError.Number : -(present + future) / payment;
        var level = payment * (1 + rate * due) / rate;
        var ratio = (level - future) / (present + level);
        return ratio <= 0 || rate <= -1 ? CellError.Number : Math.Log(ratio) / Math.Log(1 + rate);
    }

    /// <summary>
    /// The rate at which all payments balance: by Newton's method from a guess, and by halving an interval where that runs astray.
    /// </summary>
    private static FormulaValue Rate(Call call)
    {
        var (periods, payment, present, future) = (call.Number(0), call.Number(1), call.Number(2), call.Number(3, 0));
        var (due, guess) = (Due(call, 4), call.Number(5, 0.1));
        if (call.Failed || periods <= 0 || guess <= -1)
            return CellError.Number;
        call.Meter.Spend(RootFinding.Cost);
        var scale = Math.Abs(present) + Math.Abs(payment) * periods + Math.Abs(future);
        var rate = RootFinding.Newton(Balance, guess);
        if (!(Math.Abs(Balance(rate)) <= scale * 1e-9) || rate <= -1)
            rate = RootFinding.Halving(Balance);
        return rate;

        double Balance(double at) => present * Math.Pow(1 + at, periods) + payment * Annuity(at, periods, due) + future;
    }

    private static FormulaValue NetPresentValue(Call call)
    {
        var rate = call.Number(0);
        if (rate == -1)
            return CellError.DivideByZero;
        var flows = call.NumbersFrom(1);
        call.Meter.Spend(flows.Count);
        var worth = new List<double>(flows.Count);
        for (var at = 0; at < flows.Count; at++)
            worth.Add(flows[at] / Math.Pow(1 + rate, at + 1));
        return Summation.Of(worth);
    }
}
