using ClassKit.CellFormulas.Calls;
using ClassKit.CellFormulas.Operations;
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
        new("IFS", 2, FunctionRow.Many, "*VR", Ifs, FunctionTraits.Lazy),
        new("SWITCH", 3, FunctionRow.Many, "VVR*VR", Switch, FunctionTraits.Lazy),
        new("CHOOSE", 2, FunctionRow.Many, "V*R", Choose, FunctionTraits.Lazy),
    ];

    private static FormulaValue If(Call call)
    {
        var condition = call.Logical(0);
        if (call.Failed)
            return call.Failure;
        if (condition)
            return call.Count > 1 ? Branch(call, 1) : true;
        return call.Count > 2 ? Branch(call, 2) : false;
    }

    /// <summary>The value after the first condition that holds; none of them is <c>#N/A</c>.</summary>
    private static FormulaValue Ifs(Call call)
    {
        if (call.Count % 2 != 0)
            return CellError.NotAvailable;
        for (var at = 0; at < call.Count; at += 2)
        {
            var holds = call.Logical(at);
            if (call.Failed)
                return call.Failure;
            if (holds)
                return Branch(call, at + 1);
        }

        return CellError.NotAvailable;
    }

    /// <summary>The result beside the first value that equals the first argument; else the last one without a partner.</summary>
    private static FormulaValue Switch(Call call)
    {
        var subject = call.Scalar(0);
        var at = 1;
        for (; at + 1 < call.Count && !call.Failed; at += 2)
        {
            var candidate = call.Scalar(at);
            if (call.Failed)
                break;
            if (Operators.Compare(subject, candidate) == 0)
                return Branch(call, at + 1);
        }

        if (call.Failed)
            return call.Failure;
        return at < call.Count ? Branch(call, at) : CellError.NotAvailable;
    }

    private static FormulaValue Choose(Call call)
    {
        var which = call.Integer(0);
        if (call.Failed)
            return call.Failure;
        return which < 1 || which >= call.Count ? CellError.Value : Branch(call, which);
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
                if (cell.IsError)
                    return cell;
                if (cell.IsText)
                    continue;
                Coercion.TryLogical(cell, out var logical, out _);
                result = join(result, logical);
                any = true;
            }
        }

        return any ? result : CellError.Value;
    }
}
