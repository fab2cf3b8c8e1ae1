using System.Text;

namespace ClassKit.CellFormulas.Syntax;

/// <summary>Reads what stands in the brackets of a reference to a table.</summary>
/// <remarks>Source: ECMA-376 Part 1, 18.17.6.2; inside a column's name, <c>'</c> stands before a sign that would else end it.</remarks>
internal sealed class TableReferenceText
{
    private readonly string _text;
    private readonly List<string> _columns = [];
    private TableRows _rows;
    private int _at;

    private TableReferenceText(string text, int from) => (_text, _at) = (text, from);

    private char Current => _at < _text.Length ? _text[_at] : '\0';

    /// <summary>The reference as a node; null for one of a form that we do not know.</summary>
    public static TableNode? Read(string text, TextSpan span)
    {
        var open = text.IndexOf('[', StringComparison.Ordinal);
        var reader = new TableReferenceText(text, open + 1);
        if (open < 0 || !reader.Inside() || reader._at != text.Length || reader._columns.Count > 2)
            return null;
        return new(
            open == 0 ? null : text[..open],
            reader._rows == TableRows.None ? TableRows.Data : reader._rows,
            reader._columns.ElementAtOrDefault(0),
            reader._columns.ElementAtOrDefault(1),
            text,
            span
        );
    }

    /// <summary>From after the first bracket to after the last.</summary>
    private bool Inside()
    {
        SkipSpace();
        if (Current == '@')
        {
            _at++;
            _rows = TableRows.ThisRow;
            SkipSpace();
        }

        if (Current == ']')
            return Take(']');
        if (Current != '[')
            return Words(']') is { } plain && Take(']') && Keep(plain);
        do
        {
            SkipSpace();
            if (!Take('[') || Words(']') is not { } words || !Take(']') || !Keep(words))
                return false;
            SkipSpace();
        } while (Take(',') || Take(':'));
        return Take(']');
    }

    private bool Keep(string words)
    {
        var rows = words.ToUpperInvariant() switch
        {
            "#ALL" => TableRows.All,
            "#DATA" => TableRows.Data,
            "#HEADERS" => TableRows.Headers,
            "#TOTALS" => TableRows.Totals,
            "#THIS ROW" => TableRows.ThisRow,
            _ => TableRows.None,
        };
        if (rows == TableRows.None)
            _columns.Add(Unescaped(words));
        else
            _rows |= rows;
        return true;
    }

    private string? Words(char end)
    {
        var from = _at;
        while (_at < _text.Length && _text[_at] != end)
            _at += _text[_at] == '\'' ? 2 : 1;
        return _at > from && _at < _text.Length ? _text[from.._at] : null;
    }

    private static string Unescaped(string words)
    {
        if (!words.Contains('\'', StringComparison.Ordinal))
            return words;
        var plain = new StringBuilder();
        for (var at = 0; at < words.Length; at++)
        {
            if (words[at] == '\'' && at + 1 < words.Length)
                at++;
            plain.Append(words[at]);
        }

        return plain.ToString();
    }

    private bool Take(char sign)
    {
        if (Current != sign)
            return false;
        _at++;
        return true;
    }

    private void SkipSpace()
    {
        while (Current is ' ' or '\n' or '\r' or '\t')
            _at++;
    }
}
