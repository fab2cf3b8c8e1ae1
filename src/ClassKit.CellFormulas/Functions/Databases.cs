using ClassKit.CellFormulas.Calls;
using ClassKit.CellFormulas.Obstacles;
using ClassKit.CellFormulas.Values;

namespace ClassKit.CellFormulas.Functions;

/// <summary>Statistics of one column of a table over the rows that meet criteria laid out in cells (OpenFormula 1.3, 6.9).</summary>
internal static class Databases
{
    public static readonly FunctionRow[] Rows =
    [
        Of("DSUM", numbers => Summation.Of(numbers)),
        Of("DAVERAGE", numbers => numbers.Count == 0 ? CellError.DivideByZero : Statistics.Mean(numbers)),
        Of("DMAX", numbers => numbers.Count == 0 ? 0 : numbers.Max()),
        Of("DMIN", numbers => numbers.Count == 0 ? 0 : numbers.Min()),
        Of("DPRODUCT", numbers => numbers.Count == 0 ? 0 : numbers.Aggregate(1.0, (product, number) => product * number)),
        Of("DSTDEV", numbers => Statistics.Root(Statistics.Variance(numbers, 1))),
        Of("DSTDEVP", numbers => Statistics.Root(Statistics.Variance(numbers, 0))),
        Of("DVAR", numbers => Statistics.Variance(numbers, 1)),
        Of("DVARP", numbers => Statistics.Variance(numbers, 0)),
        new("DCOUNT", 3, 3, "AVA", call => Count(call, cell => cell.IsNumber)),
        new("DCOUNTA", 3, 3, "AVA", call => Count(call, cell => !cell.IsBlank)),
        new("DGET", 3, 3, "AVA", Only),
    ];

    private static FunctionRow Of(string name, Func<List<double>, FormulaValue> statistic) => new(name, 3, 3, "AVA", call =>
        {
            if (Chosen(call) is not { } cells)
                return false;
            var numbers = new List<double>();
            foreach (var cell in cells)
            {
                if (cell.IsError)
                    return cell;
                if (cell.IsNumber)
                    numbers.Add(cell.Number);
            }

            return statistic(numbers);
        });

    private static FormulaValue Count(Call call, Func<CellValue, bool> counts) =>
        Chosen(call, fieldMayMiss: true) is { } cells ? cells.Count(counts) : false;

    /// <summary>The one value; none is <c>#VALUE!</c>, several are <c>#NUM!</c>.</summary>
    private static FormulaValue Only(Call call) =>
        Chosen(call) switch
        {
            null => false,
            [] => CellError.Value,
            [var only] => only,
            _ => CellError.Number,
        };

    /// <summary>
    /// The cells of the field in the rows that meet the criteria; null if the result is decided. Without a field each row counts as a
    /// number.
    /// </summary>
    private static List<CellValue>? Chosen(Call call, bool fieldMayMiss = false)
    {
        var (table, criteria) = (call.Array(0), call.Array(2));
        var column = call.IsMissing(1) && fieldMayMiss ? -1 : Column(call, table, call.Scalar(1));
        if (call.Failed)
            return null;
        var rows = Conditions(call, table, criteria);
        if (call.Run.TooLarge((long)table.StoredRows * Math.Max(1, rows.Count)))
            return null;
        var cells = new List<CellValue>();
        for (var row = 1; row < table.Rows && row < Math.Max(2, table.StoredRows); row++)
        {
            if (
                rows.Exists(conditions =>
                    conditions.TrueForAll(condition => condition.Criterion.IsMetBy(table[row, condition.Column], call.Meter))
                )
            )
                cells.Add(column < 0 ? CellValue.FromNumber(1) : table[row, column]);
        }

        return cells;
    }

    private static int Column(Call call, ArrayValue table, CellValue field)
    {
        var column =
            field.IsText ? Named(call, table, field.Text)
            : Coercion.TryNumber(field, call.Meter, out var number, out _) ? (int)Math.Clamp(Numbers.Truncate(number), -1, int.MaxValue) - 1
            : -1;
        if (column < 0 || column >= table.Columns)
            call.Fail(CellError.Value);
        return column;
    }

    private static int Named(Call call, ArrayValue table, string name)
    {
        for (var column = 0; column < table.Columns; column++)
        {
            if (string.Equals(Head(call, table, column), name.Trim(), StringComparison.OrdinalIgnoreCase))
                return column;
        }

        return -1;
    }

    /// <summary>What a column is called: numbers will do, and are compared as texts.</summary>
    private static string Head(Call call, ArrayValue table, int column) =>
        Coercion.TryText(table[0, column], call.Meter, out var text, out _) ? text.Trim() : "";

    /// <summary>Each row of the criteria is met where all its cells are; empty cells ask for nothing.</summary>
    private static List<List<(int Column, Criterion Criterion)>> Conditions(Call call, ArrayValue table, ArrayValue criteria)
    {
        var rows = new List<List<(int Column, Criterion Criterion)>>();
        for (var row = 1; row < criteria.Rows && row <= criteria.StoredRows; row++)
        {
            var conditions = new List<(int Column, Criterion Criterion)>();
            for (var column = 0; column < criteria.StoredColumns; column++)
            {
                if (criteria[row, column] is not { IsBlank: false } asked)
                    continue;
                if (Head(call, criteria, column) is { Length: > 0 } head && Named(call, table, head) is var at and >= 0)
                    conditions.Add((at, Criterion.OfDatabase(asked)));
                else
                    call.Run.Unsupported(new Obstacle.FormulaCriterion());
            }

            rows.Add(conditions);
        }

        return rows;
    }
}
