using ClassKit.CellFormulas.Evaluating;
using ClassKit.CellFormulas.Values;

namespace ClassKit.CellFormulas.Functions;

/// <summary>Texts taken apart at delimiters. Newer than both standards: Microsoft's function reference.</summary>
internal static class TextParts
{
    public static readonly FunctionRow[] Rows =
    [
        new("TEXTBEFORE", 2, 6, "VAVVVV", call => Around(call, before: true)),
        new("TEXTAFTER", 2, 6, "VAVVVV", call => Around(call, before: false)),
        new("TEXTSPLIT", 2, 6, "VAAVVV", Split),
    ];

    private static FormulaValue Around(Call call, bool before)
    {
        var text = call.Text(0);
        var delimiters = Delimiters(call, 1);
        var (instance, comparison, endCounts) = (call.Integer(2, 1), Comparison(call, 3), call.Logical(4, false));
        if (call.Failed) return false;
        if (instance == 0 || Math.Abs((long)instance) > text.Length + 1) return CellError.Value;
        var found = Cuts(text, delimiters, comparison);
        if (endCounts) found.Insert(instance > 0 ? found.Count : 0, instance > 0 ? (text.Length, 0) : (0, 0));
        var at = instance > 0 ? instance - 1 : found.Count + instance;
        if (at < 0 || at >= found.Count) return call.IsMissing(5) ? CellError.NotAvailable : call.Any(5);
        return before ? text[..found[at].At] : text[(found[at].At + found[at].Length)..];
    }

    private static FormulaValue Split(Call call)
    {
        var text = call.Text(0);
        var columns = call.IsMissing(1) ? [] : Delimiters(call, 1);
        var rows = call.IsMissing(2) ? [] : Delimiters(call, 2);
        var (ignoreEmpty, comparison) = (call.Logical(3, false), Comparison(call, 4));
        if (call.Failed) return false;
        if (columns.Count + rows.Count == 0) return CellError.Value;
        var padding = call.IsMissing(5) ? CellValue.FromError(CellError.NotAvailable) : call.Any(5);
        var lines = Pieces(text, rows, comparison, ignoreEmpty).Select(line => Pieces(line, columns, comparison, ignoreEmpty)).Where(line => line.Count > 0).ToList();
        return lines.Count == 0 ? CellError.Value : Reshaping.Build(call, lines.Count, lines.Max(line => line.Count), (row, column) =>
            column < lines[row].Count ? CellValue.FromText(lines[row][column]) : padding);
    }

    private static List<string> Pieces(string text, List<string> delimiters, StringComparison comparison, bool ignoreEmpty)
    {
        var pieces = new List<string>();
        var from = 0;
        foreach (var (at, length) in delimiters.Count == 0 ? [] : Cuts(text, delimiters, comparison))
        {
            pieces.Add(text[from..at]);
            from = at + length;
        }

        pieces.Add(text[from..]);
        if (ignoreEmpty) pieces.RemoveAll(piece => piece.Length == 0);
        return pieces;
    }

    /// <summary>Where delimiters stand, from the left, none over another; the longest where several fit.</summary>
    private static List<(int At, int Length)> Cuts(string text, List<string> delimiters, StringComparison comparison)
    {
        var cuts = new List<(int At, int Length)>();
        for (var at = 0; at < text.Length;)
        {
            var length = delimiters.Where(delimiter => string.Compare(text, at, delimiter, 0, delimiter.Length, comparison) == 0).Select(delimiter => delimiter.Length).DefaultIfEmpty().Max();
            if (length > 0) cuts.Add((at, length));
            at += Math.Max(1, length);
        }

        return cuts;
    }

    private static List<string> Delimiters(Call call, int at)
    {
        var delimiters = new List<string>();
        foreach (var cell in call.Filled(at))
        {
            if (!Coercion.TryText(cell, out var text, out var error)) call.Fail(error);
            else if (text.Length > 0) delimiters.Add(text);
        }

        if (delimiters.Count == 0) call.Fail(CellError.Value);
        return delimiters;
    }

    private static StringComparison Comparison(Call call, int at) => call.Integer(at, 0) != 0 ? StringComparison.OrdinalIgnoreCase : StringComparison.Ordinal;
}
