namespace ClassKit.CellFormulas.Functions;

/// <summary>The character set of CHAR and CODE, Windows code page 1252.</summary>
internal static class WindowsCharacters
{
    // From 0x80 to 0x9F; the rest are those of Unicode. Five places are not in use and stand for themselves.
    private const string High =
        "\u20AC\u0081\u201A\u0192\u201E\u2026\u2020\u2021\u02C6\u2030\u0160\u2039\u0152\u008D\u017D\u008F\u0090\u2018\u2019\u201C\u201D\u2022\u2013\u2014\u02DC\u2122\u0161\u203A\u0153\u009D\u017E\u0178";

    public static char Decode(int code) => code is >= 0x80 and < 0xA0 ? High[code - 0x80] : (char)code;

    /// <summary>The code of a character; that of ? if it is not in the set.</summary>
    public static int Encode(char c)
    {
        if (c < 0x80 || c is >= '\u00A0' and <= '\u00FF')
            return c;
        var at = High.IndexOf(c, StringComparison.Ordinal);
        return at < 0 ? '?' : 0x80 + at;
    }
}
