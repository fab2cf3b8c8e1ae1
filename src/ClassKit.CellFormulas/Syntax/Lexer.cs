using System.Globalization;
using ClassKit.CellFormulas.Values;

namespace ClassKit.CellFormulas.Syntax;

/// <summary>
/// Cuts a formula's text into tokens. What no rule fits becomes a <see cref="TokenKind.Bad"/> token, which ends the list.
/// </summary>
internal sealed partial class Lexer
{
    private readonly string _text;
    private readonly List<Token> _tokens;
    private int _at;
    private bool _space;

    private Lexer(string text)
    {
        const int Usual = 32;
        // Tokens are large, and a list that grows is copied.
        (_text, _tokens) = (text, new(Math.Min(text.Length, Usual) + 1));
    }

    /// <summary>The tokens of a text, from the index given, ended by <see cref="TokenKind.End"/> or <see cref="TokenKind.Bad"/>.</summary>
    public static List<Token> Tokens(string text, int from)
    {
        var lexer = new Lexer(text) { _at = from };
        while (lexer.Next()) { }

        return lexer._tokens;
    }

    private char Current => Peek(0);

    private char Peek(int ahead) => _at + ahead < _text.Length ? _text[_at + ahead] : '\0';

    private bool Next()
    {
        var before = _at;
        while (Current is ' ' or '\t' or '\r' or '\n' or '\u00a0')
            _at++;
        _space = _at > before;
        if (_at >= _text.Length)
        {
            Add(TokenKind.End, 0);
            return false;
        }

        if (TryReference() || TrySheetFromDigit() || TryNumber() || TrySheetInQuotes() || TryWord())
            return _tokens[^1].Kind != TokenKind.Bad;
        switch (Current)
        {
            case '"':
                return Text();
            case '#':
                return Error();
            case '[':
                return Bracket(_at);
            default:
                return Symbol();
        }
    }

    private void Add(TokenKind kind, int length, string? payload = null, double number = 0, Corner first = default, Corner? last = null)
    {
        _tokens.Add(new(kind, new(_at, length), _space, payload, number, first, last));
        _at += length;
    }

    private bool Bad(int length, SyntaxFoundKind kind)
    {
        _tokens.Add(new(TokenKind.Bad, new(_at, length), _space) { Bad = kind });
        _at += length;
        return false;
    }

    private void Unsupported(int length, Construct construct)
    {
        _tokens.Add(new(TokenKind.Unsupported, new(_at, length), _space) { Construct = construct });
        _at += length;
    }

    private bool TryNumber()
    {
        if (!char.IsAsciiDigit(Current) && !(Current == '.' && char.IsAsciiDigit(Peek(1))))
            return false;
        var end = _at;
        while (end < _text.Length && char.IsAsciiDigit(_text[end]))
            end++;
        if (end < _text.Length && _text[end] == '.')
        {
            end++;
            while (end < _text.Length && char.IsAsciiDigit(_text[end]))
                end++;
        }

        var exponent = end;
        if (exponent < _text.Length && _text[exponent] is 'e' or 'E')
        {
            exponent++;
            if (exponent < _text.Length && _text[exponent] is '+' or '-')
                exponent++;
            var digits = exponent;
            while (exponent < _text.Length && char.IsAsciiDigit(_text[exponent]))
                exponent++;
            if (exponent > digits)
                end = exponent;
        }

        var value = double.Parse(_text.AsSpan(_at, end - _at), NumberStyles.Float, CultureInfo.InvariantCulture);
        if (double.IsFinite(value))
            Add(TokenKind.Number, end - _at, number: value);
        else
            Bad(end - _at, SyntaxFoundKind.NumberTooLarge);
        return true;
    }

    private bool Text()
    {
        var value = new System.Text.StringBuilder();
        for (var at = _at + 1; at < _text.Length; at++)
        {
            if (_text[at] != '"')
            {
                value.Append(_text[at]);
            }
            else if (at + 1 < _text.Length && _text[at + 1] == '"')
            {
                value.Append('"');
                at++;
            }
            else
            {
                Add(TokenKind.Text, at + 1 - _at, value.ToString());
                return true;
            }
        }

        return Bad(_text.Length - _at, SyntaxFoundKind.OpenText);
    }

    private bool Error()
    {
        var rest = _text.AsSpan(_at);
        foreach (var error in Enum.GetValues<CellError>())
        {
            var text = CellErrorText.Of(error);
            if (!rest.StartsWith(text, StringComparison.OrdinalIgnoreCase))
                continue;
            Add(TokenKind.Error, text.Length, number: (int)error);
            return true;
        }

        foreach (var text in NewerErrors)
        {
            if (!rest.StartsWith(text, StringComparison.OrdinalIgnoreCase))
                continue;
            Unsupported(text.Length, Construct.NewerError);
            return true;
        }

        Add(TokenKind.Hash, 1);
        return true;
    }

    private static readonly string[] NewerErrors =
    [
        "#SPILL!",
        "#CALC!",
        "#FIELD!",
        "#BLOCKED!",
        "#CONNECT!",
        "#UNKNOWN!",
        "#BUSY!",
        "#EXTERNAL!",
        "#PYTHON!",
        "#GETTING_DATA",
    ];

    private bool Symbol()
    {
        var (kind, length) = (Current, Peek(1)) switch
        {
            ('<', '>') => (TokenKind.NotEqual, 2),
            ('<', '=') => (TokenKind.LessOrEqual, 2),
            ('>', '=') => (TokenKind.GreaterOrEqual, 2),
            ('<', _) => (TokenKind.Less, 1),
            ('>', _) => (TokenKind.Greater, 1),
            ('=', _) => (TokenKind.Equal, 1),
            ('+', _) => (TokenKind.Plus, 1),
            ('-', _) => (TokenKind.Minus, 1),
            ('*', _) => (TokenKind.Star, 1),
            ('/', _) => (TokenKind.Slash, 1),
            ('^', _) => (TokenKind.Caret, 1),
            ('&', _) => (TokenKind.Ampersand, 1),
            ('%', _) => (TokenKind.Percent, 1),
            (':', _) => (TokenKind.Colon, 1),
            (',', _) => (TokenKind.Comma, 1),
            (';', _) => (TokenKind.Semicolon, 1),
            ('@', _) => (TokenKind.At, 1),
            ('(', _) => (TokenKind.LeftParenthesis, 1),
            (')', _) => (TokenKind.RightParenthesis, 1),
            ('{', _) => (TokenKind.LeftBrace, 1),
            ('}', _) => (TokenKind.RightBrace, 1),
            _ => (TokenKind.Bad, 1), // never half a character beyond U+FFFF: those are parts of words
        };
        if (kind != TokenKind.Bad)
        {
            Add(kind, length);
            return true;
        }

        return Bad(
            length,
            Current switch
            {
                '×' or '·' => SyntaxFoundKind.TimesSign,
                '÷' => SyntaxFoundKind.DivisionSign,
                '−' or '–' => SyntaxFoundKind.Dash,
                '“' or '”' or '„' => SyntaxFoundKind.PrintedQuote,
                '!' => SyntaxFoundKind.NoSheetBefore,
                _ => SyntaxFoundKind.Sign,
            }
        );
    }
}
