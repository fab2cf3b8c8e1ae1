using ClassKit.CellFormulas.Calls;
using ClassKit.CellFormulas.Values;

namespace ClassKit.CellFormulas.Functions;

/// <summary>Two rows of numbers side by side: correlation and the straight line through them (OpenFormula 1.3, 6.18).</summary>
internal static class Regression
{
    public static readonly FunctionRow[] Rows =
    [
        new("CORREL", 2, 2, "AA", call => Of(call, 0, 1, sums => sums.Correlation)),
        new("PEARSON", 2, 2, "AA", call => Of(call, 0, 1, sums => sums.Correlation)),
        new("RSQ", 2, 2, "AA", call => Of(call, 1, 0, sums => sums.Correlation * sums.Correlation)),
        new("STEYX", 2, 2, "AA", call => Of(call, 1, 0, sums => sums.StandardError, least: 3)),
        new("SLOPE", 2, 2, "AA", call => Of(call, 1, 0, sums => sums.Slope)),
        new("INTERCEPT", 2, 2, "AA", call => Of(call, 1, 0, sums => sums.At(0))),
        new("FORECAST", 3, 3, "VAA", Forecast),
        new("FORECAST.LINEAR", 3, 3, "VAA", Forecast),
        new("COVAR", 2, 2, "AA", call => Of(call, 0, 1, sums => sums.Xy / sums.Count, least: 1)),
        new("COVARIANCE.P", 2, 2, "AA", call => Of(call, 0, 1, sums => sums.Xy / sums.Count, least: 1)),
        new("COVARIANCE.S", 2, 2, "AA", call => Of(call, 0, 1, sums => sums.Xy / (sums.Count - 1))),
    ];

    private static FormulaValue Forecast(Call call)
    {
        var at = call.Number(0);
        return Of(call, 2, 1, sums => sums.At(at));
    }

    private static FormulaValue Of(Call call, int xAt, int yAt, Func<PairSums, double> statistic, int least = 2)
    {
        var (first, second) = (call.Array(Math.Min(xAt, yAt)), call.Array(Math.Max(xAt, yAt)));
        var (x, y) = xAt < yAt ? (first, second) : (second, first);
        if (x.Count != y.Count)
            return CellError.NotAvailable;
        var (xs, ys) = (new List<double>(), new List<double>());
        var stored = Math.Min((long)x.StoredRows * x.Columns, (long)y.StoredRows * y.Columns);
        if (call.Run.TooLarge(stored))
            return CellError.Value;
        for (var at = 0L; at < stored; at++)
        {
            var (a, b) = (x.At(at), y.At(at));
            if (first.At(at) is { IsError: true } error)
                return error;
            if (second.At(at) is { IsError: true } other)
                return other;
            if (!a.IsNumber || !b.IsNumber)
                continue;
            xs.Add(a.Number);
            ys.Add(b.Number);
        }

        if (xs.Count < least)
            return CellError.DivideByZero;
        var result = statistic(new(xs, ys));
        return double.IsFinite(result) ? result : CellError.DivideByZero;
    }
}
