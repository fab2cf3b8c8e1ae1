using ClassKit.CellFormulas.Budget;
using ClassKit.CellFormulas.Calls;
using ClassKit.CellFormulas.Operations;
using ClassKit.CellFormulas.Values;

namespace ClassKit.CellFormulas.Functions;

/// <summary>Finding values in tables (OpenFormula 1.3, 6.14).</summary>
internal static class Lookup
{
    public static readonly FunctionRow[] Rows =
    [
        new("VLOOKUP", 3, 4, "VAVV", call => InTable(call, byColumn: true)),
        new("HLOOKUP", 3, 4, "VAVV", call => InTable(call, byColumn: false)),
        new("LOOKUP", 2, 3, "VAA", InVectors),
        new("MATCH", 2, 3, "VAV", Match),
        new("XMATCH", 2, 4, "VAVV", XMatch),
        new("XLOOKUP", 3, 6, "VARRVV", XLookup),
    ];

    /// <summary>A blank to look for is 0, and an error is the result.</summary>
    private static CellValue Wanted(Call call) => call.Scalar(0) is var wanted && wanted.IsBlank ? CellValue.FromNumber(0) : wanted;

    private static FormulaValue InTable(Call call, bool byColumn)
    {
        var wanted = Wanted(call);
        var table = call.Array(1);
        var index = Numbers.Truncate(call.Number(2));
        var sorted = call.IsAbsent(3) || call.Logical(3);
        if (call.Failed)
            return call.Failure;
        if (index < 1)
            return CellError.Value;
        if (index > (byColumn ? table.Columns : table.Rows))
            return CellError.Reference;
        var keys = byColumn ? Vector.Column(table, 0) : Vector.Row(table, 0);
        var at = sorted ? keys.Ascending(wanted) : keys.Exact(wanted, call.Meter, wildcards: true);
        if (at < 0)
            return CellError.NotAvailable;
        return byColumn ? table[at, (int)index - 1] : table[(int)index - 1, at];
    }

    /// <summary>
    /// LOOKUP: in one vector, the result in another; or in the longer side of an array, the result in its last row or column.
    /// </summary>
    private static FormulaValue InVectors(Call call)
    {
        var wanted = Wanted(call);
        var table = call.Array(1);
        if (call.Failed)
            return call.Failure;
        var byColumn = table.Rows >= table.Columns;
        var keys = byColumn ? Vector.Column(table, 0) : Vector.Row(table, 0);
        var results = byColumn ? Vector.Column(table, table.Columns - 1) : Vector.Row(table, table.Rows - 1);
        if (!call.IsMissing(2))
        {
            if (Vector.Of(call.Array(2)) is not { } other || Vector.Of(table) is not { } single)
                return CellError.NotAvailable;
            (keys, results) = (single, other);
        }

        var at = keys.Ascending(wanted);
        return at < 0 || at >= results.Length ? CellError.NotAvailable : results[at];
    }

    private static FormulaValue Match(Call call)
    {
        var wanted = Wanted(call);
        if (Vector.Of(call.Array(1)) is not { } keys)
            return CellError.NotAvailable;
        var type = call.IsAbsent(2) ? 1 : call.Number(2);
        if (call.Failed)
            return call.Failure;
        var at =
            type == 0 ? keys.Exact(wanted, call.Meter, wildcards: true)
            : type < 0 ? keys.Descending(wanted)
            : keys.Ascending(wanted);
        return at < 0 ? CellError.NotAvailable : at + 1;
    }

    private static FormulaValue XMatch(Call call)
    {
        var wanted = Wanted(call);
        if (Vector.Of(call.Array(1)) is not { } keys)
            return CellError.Value;
        var at = Find(call, keys, wanted, call.Integer(2, 0), call.Integer(3, 1));
        return at < 0 ? CellError.NotAvailable : at + 1;
    }

    private static FormulaValue XLookup(Call call)
    {
        var wanted = Wanted(call);
        if (Vector.Of(call.Array(1)) is not { } keys)
            return CellError.Value;
        var results = call.Array(2);
        if (call.Failed)
            return call.Failure;
        if ((keys.IsColumn ? results.Rows : results.Columns) != keys.Length)
            return CellError.Value;
        var at = Find(call, keys, wanted, call.Integer(4, 0), call.Integer(5, 1));
        if (call.Failed)
            return call.Failure;
        if (at < 0)
            return call.IsMissing(3) ? CellError.NotAvailable : call.Value(3);
        return keys.IsColumn ? Slice(call.Meter, results, at, row: true) : Slice(call.Meter, results, at, row: false);
    }

    private static FormulaValue Slice(Meter meter, ArrayValue array, int at, bool row)
    {
        var length = row ? array.Columns : array.Rows;
        if (length == 1)
            return row ? array[at, 0] : array[0, at];
        var slice = row ? new ArrayValue(meter, 1, length) : new ArrayValue(meter, length, 1);
        for (var i = 0; i < length; i++)
        {
            if (row)
                slice[0, i] = array[at, i];
            else
                slice[i, 0] = array[i, at];
        }

        return slice;
    }

    /// <summary>
    /// Mode 0 exact, -1 or else the next smaller, 1 or else the next larger, 2 a pattern; direction 1 from the start, -1 from the end, 2
    /// and -2 in sorted order.
    /// </summary>
    private static int Find(Call call, Vector keys, CellValue wanted, int mode, int direction)
    {
        if (mode is < -1 or > 2 || direction is not (1 or -1 or 2 or -2))
            call.Fail(CellError.Value);
        if (call.Failed)
            return -1;
        if (mode != 2 && direction is 2 or -2)
            return InOrder(keys, wanted, mode, ascending: direction == 2);
        return mode switch
        {
            0 => keys.Exact(wanted, call.Meter, wildcards: false, backwards: direction < 0),
            2 => keys.Exact(wanted, call.Meter, wildcards: true, backwards: direction < 0),
            _ => keys.Nearest(wanted, above: mode == 1, backwards: direction < 0),
        };
    }

    /// <summary>By halving: what stands in order is found, in any other order what halving meets.</summary>
    private static int InOrder(Vector keys, CellValue wanted, int mode, bool ascending)
    {
        var at = keys.Halving(wanted, ascending);
        if (at >= 0 && Operators.Compare(keys[at], wanted) == 0)
            return at;

        // The nearest on this side stands at the place, the one on the other side behind it, past what is of another kind.
        if (mode == 0)
            return -1;
        if (mode == (ascending ? -1 : 1))
            return at;
        for (at++; at < keys.Count; at++)
        {
            if (keys[at].Kind == wanted.Kind)
                return at;
        }

        return -1;
    }
}
