using ClassKit.CellFormulas.Budget;

namespace ClassKit.CellFormulas.Functions;

/// <summary>
/// Patterns with <c>*</c> for any characters, <c>?</c> for one, and <c>~</c> before a sign that stands for itself. Letter case does not
/// count.
/// </summary>
internal static class Wildcard
{
    public static bool IsPattern(string text) => text.AsSpan().ContainsAny('*', '?', '~');

    /// <summary>Whether the whole text fits the pattern. Takes time in proportion to the product of both lengths at most.</summary>
    public static bool Matches(string pattern, string text, Meter meter)
    {
        var (p, t, star, mark) = (0, 0, -1, 0);
        while (t < text.Length)
        {
            meter.Take(1);
            if (p < pattern.Length && pattern[p] == '*')
            {
                (star, mark) = (p++, t);
            }
            else if (p < pattern.Length && Fits(pattern, p, text[t], out var width))
            {
                (p, t) = (p + width, t + 1);
            }
            else if (star >= 0)
            {
                (p, t) = (star + 1, ++mark);
            }
            else
            {
                return false;
            }
        }

        while (p < pattern.Length && pattern[p] == '*')
            p++;
        return p == pattern.Length;
    }

    /// <summary>Where the pattern first fits inside the text, from an index on; -1 for nowhere.</summary>
    /// <remarks>
    /// Each piece between stars is looked for behind the one before. If a later piece is nowhere behind the first place of the first one,
    /// it is behind no later place either, so that nothing is tried twice.
    /// </remarks>
    public static int Find(string pattern, string text, int from)
    {
        var (start, behind) = (-1, from);
        for (var p = 0; p <= pattern.Length; )
        {
            var end = EndOfPiece(pattern, p);
            var at = FindPiece(pattern, p, end, text, behind, out var length);
            if (at < 0)
                return -1;
            if (start < 0)
                start = at;
            behind = at + length;
            p = end + 1;
        }

        return start;
    }

    /// <summary>The next star that stands for any characters, or the pattern's end.</summary>
    private static int EndOfPiece(string pattern, int from)
    {
        while (from < pattern.Length && pattern[from] != '*')
            from += IsEscape(pattern, from) ? 2 : 1;
        return from;
    }

    private static int FindPiece(string pattern, int from, int end, string text, int behind, out int length)
    {
        for (var at = behind; at <= text.Length; at++)
        {
            var (p, t) = (from, at);
            while (p < end && t < text.Length && Fits(pattern, p, text[t], out var width))
                (p, t) = (p + width, t + 1);
            length = t - at;
            if (p >= end)
                return at;
        }

        length = 0;
        return -1;
    }

    private static bool Fits(string pattern, int at, char c, out int width)
    {
        width = 1;
        if (pattern[at] == '?')
            return true;
        if (IsEscape(pattern, at))
        {
            width = 2;
            at++;
        }

        return char.ToUpperInvariant(pattern[at]) == char.ToUpperInvariant(c);
    }

    private static bool IsEscape(string pattern, int at) =>
        pattern[at] == '~' && at + 1 < pattern.Length && pattern[at + 1] is '*' or '?' or '~';
}
