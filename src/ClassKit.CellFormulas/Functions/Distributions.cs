using ClassKit.CellFormulas.Calls;
using ClassKit.CellFormulas.Values;

namespace ClassKit.CellFormulas.Functions;

/// <summary>The shape of a row of numbers: skew, peaks, classes (OpenFormula 1.3, 6.18).</summary>
internal static class Distributions
{
    public static readonly FunctionRow[] Rows =
    [
        new("SKEW", 1, FunctionRow.Many, "*R", call => Skew(call.NumbersFrom(0))),
        new("SKEW.P", 1, FunctionRow.Many, "*R", call => PopulationSkew(call.NumbersFrom(0))),
        new("KURT", 1, FunctionRow.Many, "*R", call => Kurtosis(call.NumbersFrom(0))),
        new("STANDARDIZE", 3, 3, "VVV", call =>
            call.Number(2) is var deviation && deviation <= 0 ? CellError.Number : (call.Number(0) - call.Number(1)) / deviation
        ),
        new("TRIMMEAN", 2, 2, "AV", TrimmedMean),
        new("FREQUENCY", 2, 2, "AA", Frequency),
        new("MODE.MULT", 1, FunctionRow.Many, "*A", Modes),
    ];

    private static FormulaValue Skew(List<double> numbers)
    {
        double n = numbers.Count;
        if (n < 3 || Deviation(numbers, 1) is not { } deviation)
            return CellError.DivideByZero;
        return n / ((n - 1) * (n - 2)) * Moment(numbers, deviation, 3);
    }

    private static FormulaValue PopulationSkew(List<double> numbers) =>
        numbers.Count < 3 || Deviation(numbers, 0) is not { } deviation
            ? CellError.DivideByZero
            : Moment(numbers, deviation, 3) / numbers.Count;

    private static FormulaValue Kurtosis(List<double> numbers)
    {
        double n = numbers.Count;
        if (n < 4 || Deviation(numbers, 1) is not { } deviation)
            return CellError.DivideByZero;
        return n * (n + 1) / ((n - 1) * (n - 2) * (n - 3)) * Moment(numbers, deviation, 4) - 3 * (n - 1) * (n - 1) / ((n - 2) * (n - 3));
    }

    /// <summary>Null where the numbers do not differ.</summary>
    private static double? Deviation(List<double> numbers, int less) =>
        Statistics.Root(Statistics.Variance(numbers, less)).Scalar is { IsNumber: true, Number: not 0 } deviation ? deviation.Number : null;

    private static double Moment(List<double> numbers, double deviation, int power) =>
        Statistics.Mean(numbers) is var mean ? Summation.Of(numbers, x => Math.Pow((x - mean) / deviation, power)) : 0;

    /// <summary>The mean without a share of the numbers, half of it from each end.</summary>
    private static FormulaValue TrimmedMean(Call call)
    {
        var numbers = new List<double>();
        call.AddNumbers(0, numbers);
        var share = call.Number(1);
        if (call.Failed)
            return call.Failure;
        if (share is < 0 or >= 1 || numbers.Count == 0)
            return CellError.Number;
        call.Sort(numbers);
        var cut = (int)Numbers.Floor(numbers.Count * share / 2);
        return Statistics.Mean(numbers.GetRange(cut, numbers.Count - 2 * cut));
    }

    /// <summary>How many numbers fall up to each bound, and above the last; a column.</summary>
    private static FormulaValue Frequency(Call call)
    {
        var numbers = new List<double>();
        call.AddNumbers(0, numbers);
        var bounds = new List<double>();
        call.AddNumbers(1, bounds);
        if (call.Failed)
            return call.Failure;
        call.Meter.TakeForSorting(bounds.Count);
        call.Meter.TakeForSorting(numbers.Count);
        var places = Enumerable.Range(0, bounds.Count).OrderBy(at => bounds[at]).ToList();
        var counts = new double[bounds.Count + 1];
        foreach (var number in numbers)
        {
            var (low, high) = (0, places.Count);
            while (low < high)
            {
                var middle = (low + high) / 2;
                if (bounds[places[middle]] < number)
                    low = middle + 1;
                else
                    high = middle;
            }

            counts[low == places.Count ? bounds.Count : places[low]]++;
        }

        return Reshaping.Build(call, counts.Length, 1, (row, _) => CellValue.FromNumber(counts[row]));
    }

    /// <summary>All numbers that come most often, in the order met; a column.</summary>
    private static FormulaValue Modes(Call call)
    {
        var counts = new Dictionary<double, int>();
        foreach (var number in call.NumbersFrom(0))
            counts[number] = counts.GetValueOrDefault(number) + 1;
        if (call.Failed)
            return call.Failure;
        var most = counts.Count == 0 ? 0 : counts.Values.Max();
        if (most < 2)
            return CellError.NotAvailable;
        var modes = counts.Where(count => count.Value == most).Select(count => count.Key).ToList();
        return Reshaping.Build(call, modes.Count, 1, (row, _) => CellValue.FromNumber(modes[row]));
    }
}
