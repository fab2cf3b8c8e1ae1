using ClassKit.CellFormulas.Budget;
using ClassKit.CellFormulas.Calls;
using ClassKit.CellFormulas.Sheets;
using ClassKit.CellFormulas.Values;

namespace ClassKit.CellFormulas.Functions;

/// <summary>Sums, counts, averages and extremes of the cells that meet criteria.</summary>
internal static class Conditional
{
    public static readonly FunctionRow[] Rows =
    [
        new("COUNTIF", 2, 2, "RV", call => Count(call, 0)),
        new("COUNTIFS", 2, FunctionRow.Many, "*RV", call => Count(call, 0)),
        new("SUMIF", 2, 3, "RVR", call => Single(call, numbers => Summation.Of(numbers))),
        new("SUMIFS", 3, FunctionRow.Many, "R*RV", call => Several(call, numbers => Summation.Of(numbers))),
        new("AVERAGEIF", 2, 3, "RVR", call => Single(call, Average)),
        new("AVERAGEIFS", 3, FunctionRow.Many, "R*RV", call => Several(call, Average)),
        new("MAXIFS", 3, FunctionRow.Many, "R*RV", call => Several(call, numbers => numbers.Count == 0 ? 0 : numbers.Max())),
        new("MINIFS", 3, FunctionRow.Many, "R*RV", call => Several(call, numbers => numbers.Count == 0 ? 0 : numbers.Min())),
    ];

    private static FormulaValue Average(List<double> numbers) =>
        numbers.Count == 0 ? CellError.DivideByZero : Summation.Of(numbers) / numbers.Count;

    private static FormulaValue Count(Call call, int first)
    {
        if (Conditions(call, first) is not { } conditions)
            return call.Fail(CellError.Value);
        var (rows, columns) = Stored(conditions);
        long count = 0;
        for (var row = 0; row < rows; row++)
        {
            for (var column = 0; column < columns; column++)
            {
                if (AreMet(call.Meter, conditions, row, column))
                    count++;
            }
        }

        // All cells past what is stored are blank, and alike.
        var rest = conditions[0].Range.Count - (long)rows * columns;
        if (rest > 0 && conditions.TrueForAll(condition => condition.Criterion.IsMetBy(CellValue.Blank, call.Meter)))
            count += rest;
        return count;
    }

    /// <summary>
    /// SUMIF and AVERAGEIF: one range, one criterion, and perhaps another range to take the numbers from, laid out as the first.
    /// </summary>
    private static FormulaValue Single(Call call, Func<List<double>, FormulaValue> join)
    {
        if (call.Area(0) is not { } tested || Conditions(call, 0, 1) is not { } conditions)
            return call.Fail(CellError.Value);
        var taken = tested;
        if (!call.IsMissing(2))
        {
            if (call.Area(2) is not { } other)
                return CellError.Value;
            taken = other with
            {
                Bottom = Math.Min(other.Top + tested.Rows - 1, CellAddress.LastRow),
                Right = Math.Min(other.Left + tested.Columns - 1, CellAddress.LastColumn),
            };
        }

        return Join(call, call.Rectangles.Array(taken), conditions, join);
    }

    /// <summary>SUMIFS and its kin: the numbers first, then ranges of the same size with their criteria.</summary>
    private static FormulaValue Several(Call call, Func<List<double>, FormulaValue> join)
    {
        if (call.Area(0) is not { } area)
            return CellError.Value;
        if (Conditions(call, 1) is not { } conditions)
            return call.Fail(CellError.Value);
        var taken = call.Rectangles.Array(area);
        if (taken.Rows != conditions[0].Range.Rows || taken.Columns != conditions[0].Range.Columns)
            return CellError.Value;
        return Join(call, taken, conditions, join);
    }

    private static FormulaValue Join(
        Call call,
        ArrayValue taken,
        List<(ArrayValue Range, Criterion Criterion)> conditions,
        Func<List<double>, FormulaValue> join
    )
    {
        var numbers = new List<double>();
        for (var row = 0; row < taken.StoredRows && !call.Failed; row++)
        {
            for (var column = 0; column < taken.StoredColumns; column++)
            {
                var cell = taken[row, column];
                if (!cell.IsNumber && !cell.IsError || !AreMet(call.Meter, conditions, row, column))
                    continue;
                if (cell.IsError)
                    return cell;
                numbers.Add(cell.Number);
            }
        }

        return join(numbers);
    }

    /// <summary>Ranges of one size with their criteria, or null if an argument is no range or of another size.</summary>
    private static List<(ArrayValue Range, Criterion Criterion)>? Conditions(Call call, int first, int most = int.MaxValue)
    {
        var conditions = new List<(ArrayValue Range, Criterion Criterion)>();
        for (var at = first; at < call.Count && conditions.Count < most; at += 2)
        {
            if (at + 1 >= call.Count || call.Area(at) is not { } area)
                return null;
            var range = call.Rectangles.Array(area);
            if (conditions.Count > 0 && (range.Rows != conditions[0].Range.Rows || range.Columns != conditions[0].Range.Columns))
                return null;
            conditions.Add((range, Criterion.Of(call.Any(at + 1))));
        }

        return conditions;
    }

    private static bool AreMet(Meter meter, List<(ArrayValue Range, Criterion Criterion)> conditions, int row, int column)
    {
        foreach (var (range, criterion) in conditions)
        {
            meter.Take(1);
            if (!criterion.IsMetBy(range[row, column], meter))
                return false;
        }

        return true;
    }

    private static (int Rows, int Columns) Stored(List<(ArrayValue Range, Criterion Criterion)> conditions) =>
        (conditions.Max(condition => condition.Range.StoredRows), conditions.Max(condition => condition.Range.StoredColumns));
}
