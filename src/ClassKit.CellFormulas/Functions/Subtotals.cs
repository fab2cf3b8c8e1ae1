using ClassKit.CellFormulas.Calls;
using ClassKit.CellFormulas.Values;

namespace ClassKit.CellFormulas.Functions;

/// <summary>Sums, counts and other statistics that leave out other subtotals, and on request hidden rows and errors.</summary>
/// <remarks>
/// OpenFormula 1.3, 6.16 SUBTOTAL; ECMA-376 Part 1, 18.17.7 SUBTOTAL. AGGREGATE is newer than both: Microsoft's function reference.
/// </remarks>
internal static class Subtotals
{
    private const int HiddenToo = 100;
    private const int FirstWithRank = 14;

    public static readonly FunctionRow[] Rows =
    [
        new("SUBTOTAL", 2, FunctionRow.Many, "V*R", Subtotal),
        new("AGGREGATE", 3, FunctionRow.Many, "VV*A", Aggregate),
    ];

    /// <summary>Functions 1 to 11 leave out what a filter hides, 101 to 111 all hidden rows.</summary>
    private static FormulaValue Subtotal(Call call)
    {
        var function = call.Integer(0);
        if (call.Failed)
            return call.Failure;
        var hidden = function > HiddenToo;
        if (hidden)
            function -= HiddenToo;
        if (function is < 1 or > 11)
            return CellError.Value;
        return Statistic(call, function, Cells(call, 1, call.Count, new(hidden, Nested: true, Errors: false)));
    }

    private static FormulaValue Aggregate(Call call)
    {
        var (function, option) = (call.Integer(0), call.Integer(1, 0));
        if (call.Failed)
            return call.Failure;
        if (function is < 1 or > 19 || option is < 0 or > 7)
            return CellError.Value;
        var leaveOut = new LeaveOut(option is 1 or 3 or 5 or 7, Nested: option <= 3, option is 2 or 3 or 6 or 7);
        if (function < FirstWithRank)
            return Statistic(call, function, Cells(call, 2, call.Count, leaveOut));
        if (call.Count != 4)
            return CellError.Value;
        var sorted = Numbers(call, Cells(call, 2, 3, leaveOut));
        call.Sort(sorted);
        var rank = call.Number(3);
        if (call.Failed)
            return call.Failure;
        return function switch
        {
            14 => Order.Ranked(sorted, rank, fromTop: true),
            15 => Order.Ranked(sorted, rank, fromTop: false),
            16 => Order.Inclusive(sorted, rank),
            17 => Order.Inclusive(sorted, Values.Numbers.Truncate(rank) / 4),
            18 => Order.Exclusive(sorted, rank),
            _ => Order.Exclusive(sorted, Values.Numbers.Truncate(rank) / 4),
        };
    }

    private static FormulaValue Statistic(Call call, int function, List<CellValue> cells)
    {
        if (call.Failed)
            return call.Failure;
        if (function == 2)
            return cells.Count(cell => cell.IsNumber);
        if (function == 3)
            return cells.Count;
        var numbers = Numbers(call, cells);
        if (call.Failed)
            return call.Failure;
        return function switch
        {
            1 => numbers.Count == 0 ? CellError.DivideByZero : Statistics.Mean(numbers),
            4 => numbers.Count == 0 ? 0 : numbers.Max(),
            5 => numbers.Count == 0 ? 0 : numbers.Min(),
            6 => numbers.Count == 0 ? 0 : numbers.Aggregate(1.0, (product, number) => product * number),
            7 => Statistics.Root(Statistics.Variance(numbers, 1)),
            8 => Statistics.Root(Statistics.Variance(numbers, 0)),
            9 => Summation.Of(numbers),
            10 => Statistics.Variance(numbers, 1),
            11 => Statistics.Variance(numbers, 0),
            12 => Order.Median(call, numbers),
            _ => Order.Mode(numbers),
        };
    }

    private static List<double> Numbers(Call call, List<CellValue> cells)
    {
        var numbers = new List<double>();
        foreach (var cell in cells)
        {
            if (cell.IsError)
                call.Fail(cell.Error);
            else if (cell.IsNumber)
                numbers.Add(cell.Number);
        }

        return numbers;
    }

    /// <summary>What is filled in the arguments, less what is to be left out. Only the functions with a rank take arrays.</summary>
    private static List<CellValue> Cells(Call call, int from, int to, LeaveOut leaveOut)
    {
        var cells = new List<CellValue>();
        for (var at = from; at < to && !call.Failed; at++)
        {
            var value = call.Value(at);
            if (value.Reference is { } reference)
            {
                foreach (var area in reference.Areas)
                    AddArea(call, area, cells, leaveOut);
            }
            else if (value.Array is not null && to == from + 1 && call.Count == 4)
            {
                cells.AddRange(call.Filled(at));
            }
            else
            {
                call.Fail(value.IsError ? value.Scalar.Error : CellError.Value);
            }
        }

        if (leaveOut.Errors)
            cells.RemoveAll(cell => cell.IsError);
        return cells;
    }

    private static void AddArea(Call call, Area area, List<CellValue> taken, LeaveOut leaveOut)
    {
        var cells = call.Cells;
        if (cells.Used(area) is not { } used || call.Run.TooLarge((long)used.Rows * used.Columns))
            return;
        for (var row = used.Top; row <= used.Bottom && !call.Run.Halted; row++)
        {
            if (cells.IsHidden(used.Sheet, row, byFilterOnly: !leaveOut.Hidden))
                continue;
            for (var column = used.Left; column <= used.Right; column++)
            {
                if (leaveOut.Nested && IsSubtotal(call, used.Sheet, row, column))
                    continue;
                if (cells.Read(used.Sheet, row, column) is { IsBlank: false } cell)
                    taken.Add(cell);
            }
        }
    }

    /// <summary>True for a cell whose own formula is a subtotal, which other subtotals leave out.</summary>
    private static bool IsSubtotal(Call call, int sheet, int row, int column)
    {
        if (call.Cells.FormulaText(sheet, row, column) is not { } text)
            return false;
        call.Meter.TakeForCharacters(text.Length);
        return text.Contains("SUBTOTAL(", StringComparison.OrdinalIgnoreCase)
            || text.Contains("AGGREGATE(", StringComparison.OrdinalIgnoreCase);
    }

    private readonly record struct LeaveOut(bool Hidden, bool Nested, bool Errors);
}
