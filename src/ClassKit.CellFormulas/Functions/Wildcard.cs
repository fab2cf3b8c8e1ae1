namespace ClassKit.CellFormulas.Functions;

/// <summary>Patterns with <c>*</c> for any characters, <c>?</c> for one, and <c>~</c> before a sign that stands for itself. Letter case does not count.</summary>
internal static class Wildcard
{
    public static bool IsPattern(string text) => text.AsSpan().ContainsAny('*', '?', '~');

    /// <summary>Whether the whole text fits the pattern. Takes time in proportion to the product of both lengths at most.</summary>
    public static bool Matches(string pattern, string text)
    {
        var (p, t, star, mark) = (0, 0, -1, 0);
        while (t < text.Length)
        {
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

        while (p < pattern.Length && pattern[p] == '*') p++;
        return p == pattern.Length;
    }

    /// <summary>Where the pattern first fits inside the text, from an index on; -1 for nowhere.</summary>
    public static int Find(string pattern, string text, int from)
    {
        for (var start = from; start <= text.Length; start++)
        {
            if (Matches(pattern + "*", text[start..])) return start;
        }

        return -1;
    }

    private static bool Fits(string pattern, int at, char c, out int width)
    {
        width = 1;
        if (pattern[at] == '?') return true;
        if (pattern[at] == '~' && at + 1 < pattern.Length && pattern[at + 1] is '*' or '?' or '~')
        {
            width = 2;
            at++;
        }

        return char.ToUpperInvariant(pattern[at]) == char.ToUpperInvariant(c);
    }
}
