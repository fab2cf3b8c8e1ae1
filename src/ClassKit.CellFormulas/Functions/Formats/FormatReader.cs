using System.Globalization;

namespace ClassKit.CellFormulas.Functions.Formats;

/// <summary>Cuts a section of a number format into its parts.</summary>
internal sealed class FormatReader(string code)
{
    private const int MostDenominatorDigits = 7;

    private int _at;

    /// <summary>Reads the whole section.</summary>
    /// <returns>False for something that we do not evaluate.</returns>
    public bool Read(List<FormatPart> parts, Action<Func<double, bool>> condition)
    {
        while (_at < code.Length)
        {
            if (!Next(parts, condition))
                return false;
        }

        return true;
    }

    private bool Next(List<FormatPart> parts, Action<Func<double, bool>> condition)
    {
        var c = code[_at];
        switch (c)
        {
            case '"':
                var end = code.IndexOf('"', _at + 1);
                if (end < 0)
                    end = code.Length;
                return Add(parts, FormatPartKind.Literal, code[(_at + 1)..end], end + 1 - _at);
            case '\\':
                return Add(parts, FormatPartKind.Literal, _at + 1 < code.Length ? code.Substring(_at + 1, 1) : "", 2);
            case '_':
                return Add(parts, FormatPartKind.Literal, " ", 2);
            case '*':
                return Add(parts, FormatPartKind.Literal, "", 2);
            case '0' or '#' or '?':
                return Add(parts, FormatPartKind.Digit, c.ToString(), 1);
            case '.':
                return Add(
                    parts,
                    parts.Exists(part => part.Kind == FormatPartKind.Point) ? FormatPartKind.Literal : FormatPartKind.Point,
                    ".",
                    1
                );
            case '%':
                return Add(parts, FormatPartKind.Percent, "%", 1);
            case '@':
                return Add(parts, FormatPartKind.Text, "@", 1);
            case '[':
                return Bracket(parts, condition);
            case '/'
                when parts.Exists(part => part.Kind == FormatPartKind.Digit)
                    && !parts.Exists(part => part.Kind is FormatPartKind.Slash or FormatPartKind.Date):
                return Add(parts, FormatPartKind.Slash, "/", 1);
            case >= '1' and <= '9' when parts.Exists(part => part.Kind == FormatPartKind.Slash):
                var digits = 1;
                while (_at + digits < code.Length && char.IsAsciiDigit(code[_at + digits]))
                    digits++;
                return digits <= MostDenominatorDigits && Add(parts, FormatPartKind.Denominator, code.Substring(_at, digits), digits);
        }

        if (Starts("General"))
            return Add(parts, FormatPartKind.General, "General", 7);
        if (Starts("AM/PM"))
            return Add(parts, FormatPartKind.HalfDay, "AM/PM", 5);
        if (Starts("A/P"))
            return Add(parts, FormatPartKind.HalfDay, code.Substring(_at, 3), 3);
        if (Starts("E+") || Starts("E-"))
            return Add(parts, FormatPartKind.Exponent, code.Substring(_at, 2), 2);
        if (char.ToLowerInvariant(c) is 'y' or 'm' or 'd' or 'h' or 's')
        {
            var length = 1;
            while (_at + length < code.Length && char.ToLowerInvariant(code[_at + length]) == char.ToLowerInvariant(c))
                length++;
            return Add(parts, FormatPartKind.Date, code.Substring(_at, length).ToLowerInvariant(), length);
        }

        // Other letters need quotes in a format; programs differ in what they do without.
        return !char.IsAsciiLetter(c) && Add(parts, FormatPartKind.Literal, c.ToString(), 1);
    }

    private bool Starts(string word) => string.Compare(code, _at, word, 0, word.Length, StringComparison.OrdinalIgnoreCase) == 0;

    private bool Add(List<FormatPart> parts, FormatPartKind kind, string text, int length)
    {
        parts.Add(new(kind, text));
        _at += length;
        return true;
    }

    /// <summary>A colour, a condition, a currency, or elapsed time.</summary>
    private bool Bracket(List<FormatPart> parts, Action<Func<double, bool>> condition)
    {
        var end = code.IndexOf(']', _at);
        if (end < 0)
            return false;
        var inner = code[(_at + 1)..end];
        _at = end + 1;
        if (
            inner.Length > 0
            && inner.ToLowerInvariant().All(c => c == char.ToLowerInvariant(inner[0]))
            && char.ToLowerInvariant(inner[0]) is 'h' or 'm' or 's'
        )
        {
            parts.Add(new(FormatPartKind.Elapsed, inner.ToLowerInvariant()));
            return true;
        }

        if (inner.StartsWith('$'))
        {
            var dash = inner.IndexOf('-', StringComparison.Ordinal);
            parts.Add(new(FormatPartKind.Literal, dash < 0 ? inner[1..] : inner[1..dash]));
            return true;
        }

        return Compare(inner, condition) || inner.All(char.IsAsciiLetterOrDigit);
    }

    private static bool Compare(string inner, Action<Func<double, bool>> condition)
    {
        var digits = inner.TrimStart('<', '>', '=');
        if (
            digits.Length == inner.Length
            || digits.Length == 0
            || !double.TryParse(digits, NumberStyles.Float, CultureInfo.InvariantCulture, out var bound)
        )
            return false;
        Func<double, bool>? test = inner[..^digits.Length] switch
        {
            "<" => number => number < bound,
            "<=" => number => number <= bound,
            ">" => number => number > bound,
            ">=" => number => number >= bound,
            "=" => number => number == bound,
            "<>" => number => number != bound,
            _ => null,
        };
        if (test is not null)
            condition(test);
        return test is not null;
    }
}
