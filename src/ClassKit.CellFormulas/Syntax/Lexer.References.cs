using System.Globalization;
using ClassKit.CellFormulas.Sheets;

namespace ClassKit.CellFormulas.Syntax;

/// <summary>The tokens that point at cells: references, sheets, names, and the outside references that we only recognise.</summary>
internal sealed partial class Lexer
{
    /// <summary>
    /// <c>B5</c>, <c>$B$5</c>, <c>B:C</c>, <c>5:9</c>. A word that only starts like one is left to <see cref="TryWord"/>.
    /// </summary>
    private bool TryReference()
    {
        if (Current != '$' && !char.IsAsciiLetterOrDigit(Current))
            return false;
        var end = Corner(_at, out var first);
        if (end < 0)
            return false;
        if (first.Row == 0 || first.Column == 0)
        {
            // Half a cell is a reference only with its other half of the same sort: B:C, 5:9.
            if (end >= _text.Length || _text[end] != ':')
                return false;
            var lastEnd = Corner(end + 1, out var last);
            if (lastEnd < 0 || first.Row == 0 != (last.Row == 0) || first.Column == 0 != (last.Column == 0))
                return false;
            if (ContinuesWord(lastEnd))
                return false;
            Add(TokenKind.Reference, lastEnd - _at, first: first, last: last);
            return true;
        }

        if (ContinuesWord(end))
            return false;
        Add(TokenKind.Reference, end - _at, first: first);
        return true;
    }

    /// <summary>Reads letters, digits or both, each perhaps after a <c>$</c>; returns where they end, or -1.</summary>
    private int Corner(int at, out Corner corner)
    {
        corner = default;
        var columnFixed = at < _text.Length && _text[at] == '$';
        var letters = columnFixed ? at + 1 : at;
        var end = letters;
        var column = 0;
        for (; end < _text.Length && char.IsAsciiLetter(_text[end]); end++)
        {
            if (end - letters == 3)
                return -1;
            column = column * 26 + (char.ToUpperInvariant(_text[end]) - 'A' + 1);
        }

        if (column > CellAddress.LastColumn)
            return -1;
        if (column == 0)
        {
            end = at;
            columnFixed = false;
        }

        var rowFixed = end < _text.Length && _text[end] == '$';
        var digits = rowFixed ? end + 1 : end;
        var digitsEnd = digits;
        while (digitsEnd < _text.Length && char.IsAsciiDigit(_text[digitsEnd]))
            digitsEnd++;
        var row = 0;
        if (digitsEnd > digits)
        {
            if (digitsEnd - digits > 7)
                return -1;
            row = int.Parse(_text.AsSpan(digits, digitsEnd - digits), NumberStyles.None, CultureInfo.InvariantCulture);
            if (row is < 1 or > CellAddress.LastRow)
                return -1;
            end = digitsEnd;
        }
        else if (rowFixed || column == 0)
        {
            return -1;
        }

        corner = new(row, rowFixed, column, columnFixed);
        return end;
    }

    private bool ContinuesWord(int at) => at < _text.Length && (IsWordPart(_text[at]) || _text[at] is '(' or '!' or '[' or '$');

    private static bool IsWordStart(char c) => char.IsLetter(c) || c is '_' or '\\';

    private static bool IsWordPart(char c) => char.IsLetterOrDigit(c) || c is '_' or '\\' or '.' or '?' || char.IsSurrogate(c);

    /// <summary>A name, a function before its parenthesis, a logical, or a sheet before its exclamation mark.</summary>
    private bool TryWord()
    {
        if (!IsWordStart(Current) && !char.IsAsciiDigit(Current) && !char.IsSurrogate(Current))
            return false;
        var end = _at + 1;
        while (end < _text.Length && IsWordPart(_text[end]))
            end++;
        var word = _text[_at..end];
        var next = end < _text.Length ? _text[end] : '\0';
        switch (next)
        {
            case '(':
                Add(TokenKind.Function, end - _at, word);
                return true;
            case '!':
                return AddSheet(end + 1, word);
            case ':' when SheetSpan(end + 1) is > 0 and var after:
                return AddThreeDimensional(after);
            case '[':
                return Bracket(_at);
            default:
                Add(TokenKind.Name, end - _at, word);
                return true;
        }
    }

    /// <summary><c>2007!A1</c>: some programs do not quote a sheet's name for beginning with a digit.</summary>
    private bool TrySheetFromDigit()
    {
        if (!char.IsAsciiDigit(Current))
            return false;
        var end = _at;
        while (end < _text.Length && IsWordPart(_text[end]))
            end++;
        return end < _text.Length && _text[end] == '!' && AddSheet(end + 1, _text[_at..end]);
    }

    /// <summary>In <c>One:Three!A1</c>, given the index after the colon: the index after the exclamation mark; else -1.</summary>
    private int SheetSpan(int at)
    {
        var end = at;
        while (end < _text.Length && IsWordPart(_text[end]))
            end++;
        return end > at && end < _text.Length && _text[end] == '!' ? end + 1 : -1;
    }

    private bool TrySheetInQuotes()
    {
        if (Current != '\'')
            return false;
        var name = new System.Text.StringBuilder();
        for (var at = _at + 1; at < _text.Length; at++)
        {
            if (_text[at] != '\'')
            {
                name.Append(_text[at]);
                continue;
            }

            if (at + 1 < _text.Length && _text[at + 1] == '\'')
            {
                name.Append('\'');
                at++;
                continue;
            }

            if (at + 1 >= _text.Length || _text[at + 1] != '!')
            {
                Bad(at + 1 - _at, SyntaxFoundKind.SheetWithoutMark);
                return true;
            }

            var sheet = name.ToString();
            if (sheet.Contains('[', StringComparison.Ordinal))
                return AddExternal(at + 2);
            return sheet.Contains(':', StringComparison.Ordinal) ? AddThreeDimensional(at + 2) : AddSheet(at + 2, sheet);
        }

        Bad(_text.Length - _at, SyntaxFoundKind.OpenSheetName);
        return true;
    }

    private bool AddSheet(int end, string name)
    {
        Add(TokenKind.Sheet, end - _at, name);
        return true;
    }

    private bool AddThreeDimensional(int end) => AddPointing(end, Construct.SeveralSheets);

    private bool AddExternal(int end) => AddPointing(end, Construct.OtherWorkbook);

    /// <summary>Takes what an unsupported prefix points at along with it.</summary>
    private bool AddPointing(int end, Construct construct)
    {
        while (end < _text.Length && (IsWordPart(_text[end]) || _text[end] is '$' or '#' or '!' or '/'))
            end++;
        if (
            end < _text.Length
            && _text[end] == ':'
            && end + 1 < _text.Length
            && (_text[end + 1] == '$' || char.IsAsciiLetterOrDigit(_text[end + 1]))
        )
        {
            end++;
            while (end < _text.Length && (IsWordPart(_text[end]) || _text[end] == '$'))
                end++;
        }

        Unsupported(end - _at, construct);
        return true;
    }

    /// <summary>From a word or nothing and <c>[</c>: a table's column, or another workbook's sheet.</summary>
    private bool Bracket(int from)
    {
        var depth = 0;
        var at = from;

        // ['file:///path/book.xlsx']Sheet!A1
        if (_text.AsSpan(from).StartsWith("['") && _text.IndexOf("']", from, StringComparison.Ordinal) is var quote and > 0)
        {
            depth = 1;
            at = quote + 1;
        }

        for (; at < _text.Length; at++)
        {
            if (_text[at] == '\'' && depth > 0)
                at++;
            else if (_text[at] == '[')
                depth++;
            else if (_text[at] == ']' && --depth == 0)
                break;
        }

        if (depth != 0 || at >= _text.Length)
        {
            Bad(_text.Length - _at, SyntaxFoundKind.OpenBracket);
            return true;
        }

        var end = at + 1;
        var sheet = end;
        while (sheet < _text.Length && IsWordPart(_text[sheet]))
            sheet++;
        if (sheet < _text.Length && _text[sheet] == '!')
            return AddExternal(sheet + 1);
        Unsupported(end - _at, Construct.TableReference);
        return true;
    }
}
