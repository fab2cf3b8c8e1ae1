using ClassKit.CellFormulas.Budget;
using ClassKit.CellFormulas.Calls;
using ClassKit.CellFormulas.Values;

namespace ClassKit.CellFormulas.Functions;

/// <summary>Divisors, multiples, factorials and numbers of ways to choose (OpenFormula 1.3, 6.16).</summary>
internal static class Counting
{
    private const int LargestFactorial = 170;
    private const int TicksPerFactor = 2;
    private const double LargestWhole = 9007199254740992; // 2^53

    public static readonly FunctionRow[] Rows =
    [
        new("GCD", 1, FunctionRow.Many, "*R", call => Fold(call, 0, GreatestDivisor)),
        new("LCM", 1, FunctionRow.Many, "*R", call => Fold(call, 1, (a, b) => a == 0 || b == 0 ? 0 : a / GreatestDivisor(a, b) * b)),
        new("FACT", 1, 1, "V", call => Whole(call, 0) is var n && n is < 0 or > LargestFactorial ? CellError.Number : Factorial((int)n, 1)),
        new("FACTDOUBLE", 1, 1, "V", call => Whole(call, 0) is var n && n is < -1 or > 300 ? CellError.Number : Factorial((int)n, 2)),
        new("COMBIN", 2, 2, "VV", call => Choose(call.Meter, Whole(call, 0), Whole(call, 1))),
        new("COMBINA", 2, 2, "VV", call => CombinA(call.Meter, Whole(call, 0), Whole(call, 1))),
        new("PERMUT", 2, 2, "VV", call => Permut(call.Meter, Whole(call, 0), Whole(call, 1))),
        new("MULTINOMIAL", 1, FunctionRow.Many, "*R", Multinomial),
    ];

    private static double Whole(Call call, int at) => Numbers.Truncate(call.Number(at));

    private static FormulaValue Fold(Call call, double start, Func<double, double, double> join)
    {
        var result = start;
        foreach (var number in call.NumbersFrom(0))
        {
            call.Meter.Spend(2);
            var whole = Numbers.Truncate(number);
            if (whole is < 0 or >= LargestWhole)
                return CellError.Number;
            result = join(result, whole);
            if (result >= LargestWhole)
                return CellError.Number;
        }

        return result;
    }

    private static double GreatestDivisor(double a, double b)
    {
        while (b != 0)
            (a, b) = (b, a % b);
        return a;
    }

    private static double Factorial(int n, int step)
    {
        var product = 1.0;
        for (; n > 1; n -= step)
            product *= n;
        return product;
    }

    private static FormulaValue Choose(Meter meter, double n, double k)
    {
        if (n < 0 || k < 0 || n < k)
            return CellError.Number;
        k = Math.Min(k, n - k);
        if (k > 10_000)
            return CellError.Number;
        meter.Take((long)k * TicksPerFactor);
        var ways = 1.0;
        for (var i = 1; i <= k; i++)
            ways = ways * (n - k + i) / i;
        return Math.Round(ways, MidpointRounding.AwayFromZero);
    }

    private static FormulaValue CombinA(Meter meter, double n, double k) =>
        n < 0 || k < 0 || n < k ? CellError.Number
        : n == 0 ? 1
        : Choose(meter, n + k - 1, k);

    private static FormulaValue Permut(Meter meter, double n, double k)
    {
        if (n < 0 || k < 0 || n < k || k > 10_000)
            return CellError.Number;
        meter.Take((long)k * TicksPerFactor);
        var ways = 1.0;
        for (var i = 0; i < k; i++)
            ways *= n - i;
        return ways;
    }

    private static FormulaValue Multinomial(Call call)
    {
        var (sum, ways) = (0.0, 1.0);
        foreach (var number in call.NumbersFrom(0))
        {
            var k = Numbers.Truncate(number);
            if (k is < 0 or > 10_000)
                return CellError.Number;
            call.Meter.Take((long)k * TicksPerFactor);
            for (var i = 1; i <= k; i++)
                ways = ways * (sum + i) / i;
            sum += k;
        }

        return Math.Round(ways, MidpointRounding.AwayFromZero);
    }
}
