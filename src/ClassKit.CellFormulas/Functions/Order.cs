using ClassKit.CellFormulas.Calls;
using ClassKit.CellFormulas.Values;

namespace ClassKit.CellFormulas.Functions;

/// <summary>What depends on numbers in order of size: medians, percentiles, ranks (OpenFormula 1.3, 6.18).</summary>
internal static class Order
{
    public static readonly FunctionRow[] Rows =
    [
        new("MEDIAN", 1, FunctionRow.Many, "*R", call => Median(call, call.NumbersFrom(0))),
        new("MODE", 1, FunctionRow.Many, "*A", call => Mode(Listed(call))),
        new("MODE.SNGL", 1, FunctionRow.Many, "*A", call => Mode(Listed(call))),
        new("LARGE", 2, 2, "AV", call => Ranked(call.Sorted(0), call.Number(1), fromTop: true)),
        new("SMALL", 2, 2, "AV", call => Ranked(call.Sorted(0), call.Number(1), fromTop: false)),
        new("RANK", 2, 3, "VRV", call => Rank(call, average: false)),
        new("RANK.EQ", 2, 3, "VRV", call => Rank(call, average: false)),
        new("RANK.AVG", 2, 3, "VRV", call => Rank(call, average: true)),
        new("PERCENTILE", 2, 2, "AV", call => Inclusive(call.Sorted(0), call.Number(1))),
        new("PERCENTILE.INC", 2, 2, "AV", call => Inclusive(call.Sorted(0), call.Number(1))),
        new("PERCENTILE.EXC", 2, 2, "AV", call => Exclusive(call.Sorted(0), call.Number(1))),
        new("QUARTILE", 2, 2, "AV", call => Inclusive(call.Sorted(0), Quarter(call))),
        new("QUARTILE.INC", 2, 2, "AV", call => Inclusive(call.Sorted(0), Quarter(call))),
        new("QUARTILE.EXC", 2, 2, "AV", call => Exclusive(call.Sorted(0), Quarter(call))),
        new("PERCENTRANK", 2, 3, "AVV", PercentRank),
        new("PERCENTRANK.INC", 2, 3, "AVV", PercentRank),
    ];

    /// <summary>The numbers in ranges and arrays; what is written singly, or stands in a cell named by itself, must be a number.</summary>
    private static List<double> Listed(Call call)
    {
        var numbers = new List<double>();
        for (var at = 0; at < call.Count && !call.Failed; at++)
        {
            var value = call.Value(at);
            if (value.Array is not null || value.Reference is { IsCell: false })
                call.AddNumbers(at, numbers);
            else if (call.Any(at) is { IsNumber: true } number)
                numbers.Add(number.Number);
            else
                call.Fail(call.Any(at) is { IsError: true } error ? error.Error : CellError.Value);
        }

        return numbers;
    }

    private static double Quarter(Call call) => Values.Numbers.Truncate(call.Number(1)) / 4;

    /// <summary>The value at rank 1 + share × (n - 1), between neighbours in proportion.</summary>
    public static FormulaValue Inclusive(List<double> sorted, double share) =>
        sorted.Count == 0 || share is < 0 or > 1 ? CellError.Number : Between(sorted, share * (sorted.Count - 1));

    /// <summary>The value at rank share × (n + 1); there is none below the first or above the last.</summary>
    public static FormulaValue Exclusive(List<double> sorted, double share)
    {
        var rank = share * (sorted.Count + 1);
        return sorted.Count == 0 || share is <= 0 or >= 1 || rank < 1 || rank > sorted.Count ? CellError.Number : Between(sorted, rank - 1);
    }

    private static double Between(List<double> sorted, double index)
    {
        var below = (int)Values.Numbers.Floor(index);
        return below + 1 >= sorted.Count ? sorted[^1] : sorted[below] + Math.Max(0, index - below) * (sorted[below + 1] - sorted[below]);
    }

    /// <summary>The commonest number, of several the one met first; none if no number comes twice.</summary>
    public static FormulaValue Mode(List<double> numbers)
    {
        var counts = new Dictionary<double, int>();
        var (mode, most) = (0.0, 1);
        foreach (var number in numbers)
            counts[number] = counts.GetValueOrDefault(number) + 1;
        foreach (var number in numbers)
        {
            if (counts[number] > most)
                (mode, most) = (number, counts[number]);
        }

        return most == 1 ? CellError.NotAvailable : mode;
    }

    public static FormulaValue Median(Call call, List<double> numbers) =>
        call.Sort(numbers) is { Count: > 0 } sorted ? Inclusive(sorted, 0.5) : CellError.Number;

    /// <summary>The value at a rank from 1 on; a broken rank is rounded up.</summary>
    public static FormulaValue Ranked(List<double> sorted, double rank, bool fromTop)
    {
        if (rank < 1 || rank > sorted.Count)
            return CellError.Number;
        var whole = (int)Values.Numbers.Ceiling(rank);
        return sorted[fromTop ? sorted.Count - whole : whole - 1];
    }

    private static FormulaValue Rank(Call call, bool average)
    {
        var number = call.Number(0);
        var sorted = call.Sorted(1);
        var ascending = call.Number(2, 0) != 0;
        var (below, upTo) = (CountWhile(sorted, other => other < number), CountWhile(sorted, other => other <= number));
        var before = ascending ? below : sorted.Count - upTo;
        var same = upTo - below;
        return same == 0 ? CellError.NotAvailable : before + 1 + (average ? (same - 1) / 2.0 : 0);
    }

    /// <summary>How many of numbers in ascending order come before the first that does not hold.</summary>
    private static int CountWhile(List<double> sorted, Predicate<double> holds)
    {
        var (low, high) = (0, sorted.Count);
        while (low < high)
        {
            var middle = (low + high) / 2;
            if (holds(sorted[middle]))
                low = middle + 1;
            else
                high = middle;
        }

        return low;
    }

    private static FormulaValue PercentRank(Call call)
    {
        var sorted = call.Sorted(0);
        var (number, digits) = (call.Number(1), call.Integer(2, 3));
        if (digits < 1 || sorted.Count == 0)
            return CellError.Number;
        if (number < sorted[0] || number > sorted[^1])
            return CellError.NotAvailable;
        if (sorted.Count == 1)
            return 1;
        var below = CountWhile(sorted, other => other < number);
        if (sorted[below] == number)
            return Values.Numbers.RoundDown(below / (sorted.Count - 1.0), digits);
        var part = (number - sorted[below - 1]) / (sorted[below] - sorted[below - 1]);
        return Values.Numbers.RoundDown((below - 1 + part) / (sorted.Count - 1), digits);
    }
}
