using ClassKit.CellFormulas.Calls;
using ClassKit.CellFormulas.Operations;
using ClassKit.CellFormulas.Values;

namespace ClassKit.CellFormulas.Functions;

/// <summary>Rows or columns sorted, filtered and freed of repetitions. Newer than both standards: Microsoft's function reference.</summary>
internal static class Sorting
{
    public static readonly FunctionRow[] Rows =
    [
        new("SORT", 1, 4, "AAAV", Sort),
        new("SORTBY", 2, FunctionRow.Many, "A*AV", SortBy),
        new("FILTER", 2, 3, "AAR", Filter),
        new("UNIQUE", 1, 3, "AVV", Unique),
    ];

    private static FormulaValue Sort(Call call)
    {
        var array = call.Array(0);
        var byColumn = call.Logical(3, false);
        var (indices, orders) = (Whole(call, 1), Whole(call, 2));
        if (call.Failed)
            return call.Failure;
        var across = byColumn ? array.Rows : array.Columns;
        if (
            indices.Exists(index => index < 1 || index > across)
            || orders.Exists(order => order is not (1 or -1))
            || orders.Count is 0
            || orders.Count > Math.Max(1, indices.Count)
        )
            return CellError.Value;
        var keys = indices
            .Select(
                (index, at) =>
                    (
                        Key: byColumn ? Vector.Row(array, index - 1) : Vector.Column(array, index - 1),
                        Order: orders[Math.Min(at, orders.Count - 1)]
                    )
            )
            .ToList();
        return Arranged(call, array, keys, byColumn);
    }

    private static List<int> Whole(Call call, int at)
    {
        if (call.IsMissing(at))
            return [1];
        var numbers = new List<int>();
        foreach (var cell in call.Filled(at))
        {
            if (!Coercion.TryNumber(cell, call.Meter, out var number, out var error))
                call.Fail(error);
            numbers.Add((int)Math.Clamp(Numbers.Truncate(number), -1_000_000, 1_000_000));
        }

        return numbers;
    }

    private static FormulaValue SortBy(Call call)
    {
        var array = call.Array(0);
        var keys = new List<(Vector Key, int Order)>();
        for (var at = 1; at < call.Count; at += 2)
        {
            if (Vector.Of(call.Array(at)) is not { } key)
                return call.Fail(CellError.Value);
            var order = call.Integer(at + 1, 1);
            if (order is not (1 or -1))
                return call.Fail(CellError.Value);
            keys.Add((key, order));
        }

        if (call.Failed)
            return call.Failure;
        var byColumn =
            !keys[0].Key.IsColumn && array.Rows != 1 | array.Columns > 1 && keys[0].Key.Length == array.Columns && keys[0].Key.Length > 1;
        return keys.Exists(key => key.Key.Length != (byColumn ? array.Columns : array.Rows))
            ? CellError.Value
            : Arranged(call, array, keys, byColumn);
    }

    private static FormulaValue Arranged(Call call, ArrayValue array, List<(Vector Key, int Order)> keys, bool byColumn)
    {
        var count = byColumn ? array.Columns : array.Rows;
        if (call.Run.TooLarge(array.Count))
            return CellError.Value;
        var places = Enumerable.Range(0, count).ToList();
        var sorted = places.Order(Comparer<int>.Create((a, b) => Compare(a, b, keys))).ToList();
        return Picked(call, array, sorted, byColumn);
    }

    /// <summary>Numbers, texts, logicals, errors, and blanks last whatever the order. Equals keep their places.</summary>
    private static int Compare(int a, int b, List<(Vector Key, int Order)> keys)
    {
        foreach (var (key, order) in keys)
        {
            var (left, right) = (key[a], key[b]);
            var by =
                left.IsBlank || right.IsBlank
                    ? left.IsBlank.CompareTo(right.IsBlank)
                    : (left.IsError || right.IsError ? left.IsError.CompareTo(right.IsError) : Operators.Compare(left, right)) * order;
            if (by != 0)
                return by;
        }

        return a.CompareTo(b);
    }

    private static FormulaValue Filter(Call call)
    {
        var array = call.Array(0);
        if (Vector.Of(call.Array(1)) is not { } chosen)
            return call.Fail(CellError.Value);
        var byColumn = !chosen.IsColumn && chosen.Length > 1 || (chosen.Length == 1 && array.Rows != 1 && array.Columns == 1);
        if (chosen.Length != (byColumn ? array.Columns : array.Rows))
            return call.Fail(CellError.Value);
        var places = new List<int>();
        for (var at = 0; at < chosen.Length && !call.Failed; at++)
        {
            if (!Coercion.TryLogical(chosen[at], out var isChosen, out var error))
                return call.Fail(error);
            if (isChosen)
                places.Add(at);
        }

        if (places.Count > 0)
            return Picked(call, array, places, byColumn);
        return call.IsMissing(2) ? CellError.Value : call.Value(2);
    }

    /// <summary>Each row or column once, or only those that come just once. Letter case does not count.</summary>
    private static FormulaValue Unique(Call call)
    {
        var array = call.Array(0);
        var (byColumn, onlyOnce) = (call.Logical(1, false), call.Logical(2, false));
        if (call.Failed || call.Run.TooLarge(array.Count))
            return CellError.Value;
        var count = byColumn ? array.Columns : array.Rows;
        var met = new Dictionary<string, (int First, int Times)>(StringComparer.OrdinalIgnoreCase);
        for (var at = 0; at < count; at++)
        {
            var line = byColumn ? Vector.Column(array, at) : Vector.Row(array, at);
            var text = string.Join('\u0001', Enumerable.Range(0, line.Length).Select(i => $"{line[i].Kind}\u0002{line[i]}"));
            met[text] = met.TryGetValue(text, out var before) ? before with { Times = before.Times + 1 } : (at, 1);
        }

        var places = met.Values.Where(line => !onlyOnce || line.Times == 1).Select(line => line.First).Order().ToList();
        return places.Count == 0 ? CellError.Value : Picked(call, array, places, byColumn);
    }

    private static FormulaValue Picked(Call call, ArrayValue array, List<int> places, bool byColumn) =>
        byColumn
            ? Reshaping.Build(call, array.Rows, places.Count, (row, column) => array[row, places[column]])
            : Reshaping.Build(call, places.Count, array.Columns, (row, column) => array[places[row], column]);
}
