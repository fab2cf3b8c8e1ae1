using ClassKit.CellFormulas.Calls;
using ClassKit.CellFormulas.Values;

namespace ClassKit.CellFormulas.Functions;

/// <summary>What uneven payments yield (OpenFormula 1.3, 6.12).</summary>
internal static class CashFlows
{
    private const double DaysPerYear = 365;

    public static readonly FunctionRow[] Rows =
    [
        new("IRR", 1, 2, "RV", Irr),
        new("MIRR", 3, 3, "RVV", Mirr),
        new("XNPV", 3, 3, "VAA", call => Dated(call, 1) is { } flows && call.Number(0) is var rate
                ? rate <= -1
                    ? CellError.Number
                    : Worth(flows, rate)
                : false),
        new("XIRR", 2, 3, "AAV", Xirr),
    ];

    /// <summary>The rate at which payments at equal distances balance.</summary>
    private static FormulaValue Irr(Call call)
    {
        var flows = new List<double>();
        call.AddNumbers(0, flows);
        var guess = call.Number(1, 0.1);
        if (call.Failed)
            return call.Failure;
        return Rate(call, [.. flows.Select((flow, at) => (flow, (double)at))], guess);
    }

    private static FormulaValue Rate(Call call, List<(double Flow, double Time)> flows, double guess)
    {
        if (guess <= -1 || !flows.Exists(flow => flow.Flow > 0) || !flows.Exists(flow => flow.Flow < 0))
            return CellError.Number;
        call.Meter.Spend((long)RootFinding.Cost * flows.Count);
        var scale = flows.Sum(flow => Math.Abs(flow.Flow));
        var rate = RootFinding.Newton(at => Worth(flows, at), guess);
        if (!(Math.Abs(Worth(flows, rate)) <= scale * 1e-9) || rate <= -1)
            rate = RootFinding.Halving(at => Worth(flows, at));
        return rate;
    }

    private static double Worth(List<(double Flow, double Time)> flows, double rate) =>
        Summation.Of([.. flows.Select(flow => flow.Flow / Math.Pow(1 + rate, flow.Time))]);

    /// <summary>As IRR, with one rate for money borrowed and another for money earned.</summary>
    private static FormulaValue Mirr(Call call)
    {
        var flows = new List<double>();
        call.AddNumbers(0, flows);
        var (paid, earned) = (call.Number(1), call.Number(2));
        if (call.Failed)
            return call.Failure;
        if (!flows.Exists(flow => flow < 0) || flows.Count < 2 || paid <= -1 || earned <= -1)
            return CellError.DivideByZero;
        call.Meter.Spend(2L * flows.Count);
        var gains = Worth([.. flows.Select((flow, at) => (Math.Max(0, flow), (double)at))], earned);
        var costs = Worth([.. flows.Select((flow, at) => (Math.Min(0, flow), (double)at))], paid);
        return Math.Pow(-gains * Math.Pow(1 + earned, flows.Count - 1) / costs, 1.0 / (flows.Count - 1)) - 1;
    }

    private static FormulaValue Xirr(Call call)
    {
        if (Dated(call, 0) is not { } flows)
            return false;
        var guess = call.Number(2, 0.1);
        return call.Failed ? false : Rate(call, flows, guess);
    }

    /// <summary>Payments with their distance from the first in years; null if the result is decided.</summary>
    private static List<(double Flow, double Time)>? Dated(Call call, int at)
    {
        var flows = Column(call, at);
        var dates = Column(call, at + 1);
        if (call.Failed)
            return null;
        call.Meter.Spend(flows.Count);
        if (flows.Count != dates.Count || flows.Count == 0 || dates.Exists(date => date < Math.Floor(dates[0])))
            call.Fail(CellError.Number);
        return call.Failed ? null : [.. flows.Select((flow, i) => (flow, (Math.Floor(dates[i]) - Math.Floor(dates[0])) / DaysPerYear))];
    }

    private static List<double> Column(Call call, int at)
    {
        var numbers = new List<double>();
        foreach (var cell in call.Filled(at))
        {
            if (Coercion.TryNumber(cell, call.Meter, out var number, out var error))
                numbers.Add(number);
            else
                call.Fail(error);
        }

        return numbers;
    }
}
