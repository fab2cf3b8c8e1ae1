using ClassKit.CellFormulas.Evaluating;
using ClassKit.CellFormulas.Values;

namespace ClassKit.CellFormulas.Functions;

/// <summary>Conditions and what follows from them.</summary>
internal static class Logic
{
    public static readonly FunctionRow[] Rows =
    [
        new("TRUE", 0, 0, "", _ => true),
        new("FALSE", 0, 0, "", _ => false),
        new("NOT", 1, 1, "V", call => !call.Logical(0)),
        new("AND", 1, FunctionRow.Many, "*R", call => Junction(call, (all, next) => all && next, true)),
        new("OR", 1, FunctionRow.Many, "*R", call => Junction(call, (any, next) => any || next, false)),
        new("XOR", 1, FunctionRow.Many, "*R", call => Junction(call, (odd, next) => odd ^ next, false)),
        new("IF", 1, 3, "VRR", If, FunctionTraits.Lazy),
        new("IFERROR", 2, 2, "VV", call => call.Any(0) is { IsError: false } value ? value : Branch(call, 1), FunctionTraits.Lazy),
        new("IFNA", 2, 2, "VV", call => IsNotAvailable(call.Any(0)) ? Branch(call, 1) : call.Value(0), FunctionTraits.Lazy),
    ];

    private static FormulaValue If(Call call)
    {
        var condition = call.Logical(0);
        if (call.Failed) return false;
        if (condition) return call.Count > 1 ? Branch(call, 1) : true;
        return call.Count > 2 ? Branch(call, 2) : false;
    }

    /// <summary>An argument chosen as the result; one left out between commas is 0.</summary>
    private static FormulaValue Branch(Call call, int at) => call.IsMissing(at) ? 0 : call.Value(at);

    private static bool IsNotAvailable(CellValue value) => value.IsError && value.Error == CellError.NotAvailable;

    /// <summary>Joins all truth values; texts and blanks in references do not count, and nothing to join is <c>#VALUE!</c>.</summary>
    private static FormulaValue Junction(Call call, Func<bool, bool, bool> join, bool start)
    {
        var result = start;
        var any = false;
        for (var at = 0; at < call.Count && !call.Failed; at++)
        {
            if (call.Value(at).IsScalar)
            {
                result = join(result, call.Logical(at));
                any = true;
                continue;
            }

            foreach (var cell in call.Filled(at))
            {
                if (cell.IsError) return cell;
                if (cell.IsText) continue;
                Coercion.TryLogical(cell, out var logical, out _);
                result = join(result, logical);
                any = true;
            }
        }

        return any ? result : CellError.Value;
    }
}
