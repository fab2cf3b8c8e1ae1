using ClassKit.CellFormulas.Calls;
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
        var given = Given(call, 1);
        var (instance, matchCase, endCounts) = (call.Integer(2, 1), MatchCase(call, 3), call.Logical(4, false));
        if (call.Failed)
            return call.Failure;
        if (instance == 0 || Math.Abs((long)instance) > text.Length + 1)
            return CellError.Value;
        var found = new Delimiters(given, matchCase, call.Meter).CutsIn(text);
        if (endCounts)
            found.Insert(instance > 0 ? found.Count : 0, instance > 0 ? (text.Length, 0) : (0, 0));
        var at = instance > 0 ? instance - 1 : found.Count + instance;
        if (at < 0 || at >= found.Count)
            return call.IsMissing(5) ? CellError.NotAvailable : call.Any(5);
        return before ? text[..found[at].At] : text[(found[at].At + found[at].Length)..];
    }

    private static FormulaValue Split(Call call)
    {
        var text = call.Text(0);
        var (givenColumns, givenRows) = (call.IsMissing(1) ? [] : Given(call, 1), call.IsMissing(2) ? [] : Given(call, 2));
        var (ignoreEmpty, matchCase) = (call.Logical(3, false), MatchCase(call, 4));
        if (call.Failed)
            return call.Failure;
        var (columns, rows) = (new Delimiters(givenColumns, matchCase, call.Meter), new Delimiters(givenRows, matchCase, call.Meter));
        if (!columns.Any && !rows.Any)
            return CellError.Value;
        var padding = call.IsMissing(5) ? CellValue.FromError(CellError.NotAvailable) : call.Any(5);
        var lines = Pieces(text, rows, ignoreEmpty)
            .Select(line => Pieces(line, columns, ignoreEmpty))
            .Where(line => line.Count > 0)
            .ToList();
        return lines.Count == 0
            ? CellError.Value
            : Reshaping.Build(call, lines.Count, lines.Max(line => line.Count), (row, column) =>
                column < lines[row].Count ? CellValue.FromText(lines[row][column]) : padding
            );
    }

    private static List<string> Pieces(string text, Delimiters delimiters, bool ignoreEmpty)
    {
        var pieces = new List<string>();
        var from = 0;
        foreach (var (at, length) in delimiters.Any ? delimiters.CutsIn(text) : [])
        {
            pieces.Add(text[from..at]);
            from = at + length;
        }

        pieces.Add(text[from..]);
        if (ignoreEmpty)
            pieces.RemoveAll(piece => piece.Length == 0);
        return pieces;
    }

    private static List<string> Given(Call call, int at)
    {
        var delimiters = new List<string>();
        foreach (var cell in call.Filled(at))
        {
            if (!Coercion.TryText(cell, call.Meter, out var text, out var error))
                call.Fail(error);
            else if (text.Length > 0)
                delimiters.Add(text);
        }

        if (delimiters.Count == 0)
            call.Fail(CellError.Value);
        return delimiters;
    }

    private static bool MatchCase(Call call, int at) => call.Integer(at, 0) == 0;
}
