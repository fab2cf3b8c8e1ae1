using ClassKit.CellFormulas.Calls;
using ClassKit.CellFormulas.Values;

namespace ClassKit.CellFormulas.Functions;

/// <summary>Texts found in texts.</summary>
internal static class Searching
{
    public static readonly FunctionRow[] Rows =
    [
        new("FIND", 2, 3, "VVV", call => Locate(call, (part, text, from) => text.IndexOf(part, from, StringComparison.Ordinal))),
        new("SEARCH", 2, 3, "VVV", call => Locate(call, Loosely)),
    ];

    private static FormulaValue Locate(Call call, Func<string, string, int, int> find)
    {
        var (part, text, start) = (call.Text(0), call.Text(1), call.Integer(2, 1));
        if (start < 1 || start > text.Length + 1 || (start > text.Length && part.Length > 0))
            return CellError.Value;
        call.Meter.TakeForSearch(part.Length, text.Length);
        var at = find(part, text, start - 1);
        return at < 0 ? CellError.Value : at + 1;
    }

    /// <summary>Without regard to letter case; <c>*</c> and <c>?</c> stand for any characters.</summary>
    private static int Loosely(string part, string text, int from) =>
        Wildcard.IsPattern(part) ? Wildcard.Find(part, text, from) : text.IndexOf(part, from, StringComparison.OrdinalIgnoreCase);
}
