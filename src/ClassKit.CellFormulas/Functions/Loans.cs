using ClassKit.CellFormulas.Calls;
using ClassKit.CellFormulas.Values;

namespace ClassKit.CellFormulas.Functions;

/// <summary>Interest and repayment within equal payments, and rates turned into others (OpenFormula 1.3, 6.12).</summary>
internal static class Loans
{
    private const int MostPeriods = 1_000_000;

    public static readonly FunctionRow[] Rows =
    [
        new("IPMT", 4, 6, "VVVVVV", call => Part(call, (interest, _) => interest)),
        new("PPMT", 4, 6, "VVVVVV", call => Part(call, (interest, payment) => payment - interest)),
        new("ISPMT", 4, 4, "VVVV", call =>
            call.Number(2) is var periods && periods == 0
                ? CellError.DivideByZero
                : call.Number(3) * call.Number(0) * (call.Number(1) / periods - 1)
        ),
        new("CUMIPMT", 6, 6, "VVVVVV", call => Cumulative(call, (interest, _) => interest)),
        new("CUMPRINC", 6, 6, "VVVVVV", call => Cumulative(call, (interest, payment) => payment - interest)),
        new("EFFECT", 2, 2, "VV", call => Rated(call, (rate, times) => Math.Pow(1 + rate / times, times) - 1)),
        new("NOMINAL", 2, 2, "VV", call => Rated(call, (rate, times) => (Math.Pow(1 + rate, 1 / times) - 1) * times)),
        new("RRI", 3, 3, "VVV", Growth),
        new("PDURATION", 3, 3, "VVV", Duration),
        new("FVSCHEDULE", 2, 2, "VA", Schedule),
    ];

    private static FormulaValue Part(Call call, Func<double, double, double> part)
    {
        var (rate, period, periods) = (call.Number(0), call.Number(1), call.Number(2));
        var (present, future, due) = (call.Number(3), call.Number(4, 0), Financial.Due(call, 5));
        if (call.Failed)
            return call.Failure;
        if (period < 1 || period > periods)
            return CellError.Number;
        var payment = Financial.Payment(rate, periods, present, future, due).Scalar;
        return payment.IsError ? payment : part(Interest(rate, period, payment.Number, present, due), payment.Number);
    }

    /// <summary>
    /// The interest in the payment of one period: on what is still owed when it begins. A payment at the beginning of the first bears none.
    /// </summary>
    private static double Interest(double rate, double period, double payment, double present, double due)
    {
        if (due != 0 && period == 1)
            return 0;
        var owed = -Financial.FutureValue(rate, period - 1 - due, payment, present + (due != 0 ? payment : 0), 0).Scalar.Number;
        return -owed * rate;
    }

    private static FormulaValue Cumulative(Call call, Func<double, double, double> part)
    {
        var (rate, periods, present) = (call.Number(0), call.Number(1), call.Number(2));
        var (first, last, due) = (call.Integer(3), call.Integer(4), call.Number(5));
        if (call.Failed)
            return call.Failure;
        if (
            rate <= 0
            || periods <= 0
            || present <= 0
            || first < 1
            || last < first
            || last > periods
            || due is not (0 or 1)
            || last > MostPeriods
        )
            return CellError.Number;
        call.Meter.Spend(2L * (last - first));
        var payment = Financial.Payment(rate, periods, present, 0, due).Scalar;
        if (payment.IsError)
            return payment;
        var parts = new List<double>();
        for (var period = first; period <= last; period++)
            parts.Add(part(Interest(rate, period, payment.Number, present, due), payment.Number));
        return Summation.Of(parts);
    }

    private static FormulaValue Rated(Call call, Func<double, double, double> turn)
    {
        var (rate, times) = (call.Number(0), Numbers.Truncate(call.Number(1)));
        return rate <= 0 || times < 1 ? CellError.Number : turn(rate, times);
    }

    private static FormulaValue Growth(Call call)
    {
        var (periods, present, future) = (call.Number(0), call.Number(1), call.Number(2));
        if (periods <= 0 || present == 0)
            return CellError.Number;
        return Math.Pow(future / present, 1 / periods) - 1;
    }

    private static FormulaValue Duration(Call call)
    {
        var (rate, present, future) = (call.Number(0), call.Number(1), call.Number(2));
        return rate <= 0 || present <= 0 || future <= 0 ? CellError.Number : (Math.Log(future) - Math.Log(present)) / Math.Log(1 + rate);
    }

    private static FormulaValue Schedule(Call call)
    {
        var worth = call.Number(0);
        foreach (var cell in call.Filled(1))
        {
            if (cell.IsNumber)
                worth *= 1 + cell.Number;
            else
                call.Fail(cell.IsError ? cell.Error : CellError.Value);
        }

        return worth;
    }
}
