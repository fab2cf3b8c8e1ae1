using System.Globalization;
using System.Text;
using ClassKit.CellFormulas.Calls;
using ClassKit.CellFormulas.Values;

namespace ClassKit.CellFormulas.Functions;

/// <summary>
/// Texts cut, joined and changed (OpenFormula 1.3, 6.20). Characters are counted as UTF-16 code units, as files and programs do.
/// </summary>
internal static class Texts
{
    public static readonly FunctionRow[] Rows =
    [
        new("CONCATENATE", 1, FunctionRow.Many, "*V", call => Bounded(call, Enumerable.Range(0, call.Count).Select(call.Text))),
        new("CONCAT", 1, FunctionRow.Many, "*R", call => Bounded(call, AllTexts(call, 0, skipEmpty: true))),
        new("TEXTJOIN", 3, FunctionRow.Many, "AV*R", TextJoin),
        new("LEFT", 1, 2, "VV", call => Cut(call, (text, count) => text[..count])),
        new("RIGHT", 1, 2, "VV", call => Cut(call, (text, count) => text[^count..])),
        new("MID", 3, 3, "VVV", Mid),
        new("LEN", 1, 1, "V", call => call.Text(0).Length),
        new("SUBSTITUTE", 3, 4, "VVVV", Substitute),
        new("REPLACE", 4, 4, "VVVV", Replace),
        new("TRIM", 1, 1, "V", call => string.Join(' ', call.Text(0).Split(' ', StringSplitOptions.RemoveEmptyEntries))),
        new("CLEAN", 1, 1, "V", call => new string([.. call.Text(0).Where(c => c >= ' ')])),
        new("UPPER", 1, 1, "V", call => call.Text(0).ToUpperInvariant()),
        new("LOWER", 1, 1, "V", call => call.Text(0).ToLowerInvariant()),
        new("PROPER", 1, 1, "V", call => Proper(call.Text(0))),
        new("REPT", 2, 2, "VV", Rept),
        new("EXACT", 2, 2, "VV", call => string.Equals(call.Text(0), call.Text(1), StringComparison.Ordinal)),
        new("T", 1, 1, "R", call => call.First(0) is { IsText: true } or { IsError: true } ? call.First(0) : ""),
        new("CHAR", 1, 1, "V", call =>
            call.Integer(0) is var code and >= 1 and <= 255 ? WindowsCharacters.Decode(code).ToString() : CellError.Value
        ),
        new("CODE", 1, 1, "V", call => call.Text(0) is { Length: > 0 } text ? WindowsCharacters.Encode(text[0]) : CellError.Value),
        new("UNICHAR", 1, 1, "V", call =>
            call.Integer(0) is var code and > 0 && Rune.IsValid(code) ? new Rune(code).ToString() : CellError.Value
        ),
        new("UNICODE", 1, 1, "V", call =>
            Rune.DecodeFromUtf16(call.Text(0), out var rune, out _) == System.Buffers.OperationStatus.Done ? rune.Value : CellError.Value
        ),
    ];

    /// <summary>The texts one after the other; longer than a cell can hold is <c>#VALUE!</c>.</summary>
    private static FormulaValue Bounded(Call call, IEnumerable<string> parts, params string[] separators)
    {
        var result = new StringBuilder();
        var met = 0;
        foreach (var part in parts)
        {
            if (call.Failed)
                return call.Failure;
            if (met++ > 0 && separators.Length > 0)
                result.Append(separators[(met - 2) % separators.Length]);
            result.Append(part);
            if (result.Length > call.Run.Limits.TextLength)
                return CellError.Value;
        }

        return result.ToString();
    }

    private static IEnumerable<string> AllTexts(Call call, int from, bool skipEmpty)
    {
        for (var at = from; at < call.Count; at++)
        {
            var value = call.Value(at);
            IEnumerable<CellValue> cells = skipEmpty || value.IsScalar ? call.Filled(at) : All(call, at);
            if (!skipEmpty && value.IsScalar && value.Scalar.IsBlank)
                cells = [default];
            foreach (var cell in cells)
            {
                if (!Coercion.TryText(cell, call.Meter, out var text, out var error))
                    call.Fail(error);
                if (!skipEmpty || text.Length > 0)
                    yield return text;
            }
        }
    }

    private static IEnumerable<CellValue> All(Call call, int at)
    {
        var array = call.Array(at);
        if (call.Run.TooLarge(array.Count))
            yield break;
        for (var i = 0L; i < array.Count; i++)
            yield return array.At(i);
    }

    /// <summary>Several separators are used in turn.</summary>
    private static FormulaValue TextJoin(Call call)
    {
        var separators = new List<string>();
        var given = call.Array(0);
        for (var at = 0L; at < given.Count && at < FunctionRow.Many && !call.Failed; at++)
        {
            if (!Coercion.TryText(given.At(at), call.Meter, out var text, out var error))
                call.Fail(error);
            separators.Add(text);
        }

        var skipEmpty = call.Logical(1);
        return Bounded(call, AllTexts(call, 2, skipEmpty), [.. separators]);
    }

    private static FormulaValue Cut(Call call, Func<string, int, string> part)
    {
        var text = call.Text(0);
        var count = call.IsAbsent(1) ? 1 : call.Integer(1);
        return count < 0 ? CellError.Value : part(text, Math.Min(count, text.Length));
    }

    private static FormulaValue Mid(Call call)
    {
        var (text, start, count) = (call.Text(0), call.Integer(1), call.Integer(2));
        if (start < 1 || count < 0)
            return CellError.Value;
        return start > text.Length ? "" : text.Substring(start - 1, Math.Min(count, text.Length - start + 1));
    }

    private static FormulaValue Substitute(Call call)
    {
        var (text, old, fresh) = (call.Text(0), call.Text(1), call.Text(2));
        var which = call.Integer(3, 0);
        if (!call.IsMissing(3) && which < 1)
            return CellError.Value;
        if (old.Length == 0)
            return text;
        call.Meter.TakeForSearch(old.Length, text.Length);
        var result = new StringBuilder();
        var (from, met) = (0, 0);
        while (text.IndexOf(old, from, StringComparison.Ordinal) is var at and >= 0)
        {
            met++;
            result.Append(text, from, at - from).Append(which == 0 || which == met ? fresh : old);
            from = at + old.Length;
            if (result.Length > call.Run.Limits.TextLength)
                return CellError.Value;
        }

        result.Append(text, from, text.Length - from);
        return result.Length > call.Run.Limits.TextLength ? CellError.Value : result.ToString();
    }

    private static FormulaValue Replace(Call call)
    {
        var (text, start, count, fresh) = (call.Text(0), call.Integer(1), call.Integer(2), call.Text(3));
        if (start < 1 || count < 0)
            return CellError.Value;
        var from = Math.Min(start - 1, text.Length);
        var to = (int)Math.Min((long)from + count, text.Length);
        return from + fresh.Length + text.Length - to > call.Run.Limits.TextLength
            ? CellError.Value
            : string.Concat(text.AsSpan(0, from), fresh, text.AsSpan(to));
    }

    /// <summary>A capital after everything that is no letter.</summary>
    private static string Proper(string text)
    {
        var result = text.ToLowerInvariant().ToCharArray();
        for (var at = 0; at < result.Length; at++)
        {
            if (at == 0 || !char.IsLetter(result[at - 1]))
                result[at] = char.ToUpper(result[at], CultureInfo.InvariantCulture);
        }

        return new(result);
    }

    private static FormulaValue Rept(Call call)
    {
        var (text, count) = (call.Text(0), call.Integer(1));
        if (count < 0 || (long)text.Length * count > call.Run.Limits.TextLength)
            return CellError.Value;
        return new StringBuilder().Insert(0, text, count).ToString();
    }
}
