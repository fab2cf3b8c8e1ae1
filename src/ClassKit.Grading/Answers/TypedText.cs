using System.Collections.Frozen;
using System.Globalization;
using System.Text;

namespace ClassKit.Grading.Answers;

/// <summary>Brings what keyboards of the world type to the characters that numbers and formulas are written with here.</summary>
/// <remarks>
/// Character by character, so that places in a text stay countable and the script of a self-checking page can do the same with the same
/// table. The Unicode Character Database says what is a digit, a space, a dash; .NET's own folding (NFKC) needs ICU, which ClassKit does
/// without.
/// </remarks>
public static class TypedText
{
    /// <summary>
    /// The longest text that is looked at for a number. What a student types into an answer cell has some ten characters.
    /// </summary>
    public const int Longest = 200;

    /// <summary>The decimal mark of Arabic script, which is nothing else and so never guessed at.</summary>
    internal const char ArabicDecimal = '\u066B';

    private static readonly (char Character, string Fraction)[] Fractions =
    [
        ('¼', "1/4"),
        ('½', "1/2"),
        ('¾', "3/4"),
        ('⅐', "1/7"),
        ('⅑', "1/9"),
        ('⅒', "1/10"),
        ('⅓', "1/3"),
        ('⅔', "2/3"),
        ('⅕', "1/5"),
        ('⅖', "2/5"),
        ('⅗', "3/5"),
        ('⅘', "4/5"),
        ('⅙', "1/6"),
        ('⅚', "5/6"),
        ('⅛', "1/8"),
        ('⅜', "3/8"),
        ('⅝', "5/8"),
        ('⅞', "7/8"),
    ];

    private static readonly FrozenDictionary<char, string> Known = Table().ToFrozenDictionary();

    /// <summary>A million characters are looked through for it, and only self-checking pages ask: grading must not wait for that.</summary>
    private static readonly Lazy<string> AllZeros = new(() =>
        string.Concat(
            Runes().Where(rune => Rune.GetUnicodeCategory(rune) == UnicodeCategory.DecimalDigitNumber && Rune.GetNumericValue(rune) == 0)
        )
    );

    /// <summary>What a character stands for, where it is not itself; nothing for marks that are not seen.</summary>
    public static IReadOnlyDictionary<char, string> Folds => Known;

    /// <summary>
    /// The zero of every set of decimal digits that Unicode has (general category Nd); the nine digits after it follow it.
    /// </summary>
    public static string Zeros => AllZeros.Value;

    /// <summary>The whole text folded, without spaces around it.</summary>
    public static string Fold(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        var folded = new StringBuilder(text.Length);
        foreach (var rune in text.EnumerateRunes())
            folded.Append(Fold(rune));
        return folded.ToString().Trim();
    }

    /// <summary>One character folded; it may become several (<c>½</c>) or none.</summary>
    internal static string Fold(Rune rune)
    {
        if (rune.IsBmp && Known.TryGetValue((char)rune.Value, out var known))
            return known;
        return Rune.GetUnicodeCategory(rune) == UnicodeCategory.DecimalDigitNumber
            ? ((int)Rune.GetNumericValue(rune)).ToString(CultureInfo.InvariantCulture)
            : rune.ToString();
    }

    private static Dictionary<char, string> Table()
    {
        var table = new Dictionary<char, string>();
        void Add(string folded, string characters)
        {
            foreach (var character in characters)
                table[character] = folded;
        }

        // Full-width forms stand at a fixed distance from ASCII; everything below may say otherwise.
        for (var character = '\uFF01'; character <= '\uFF5E'; character++)
            table[character] = ((char)(character - 0xFEE0)).ToString();
        Add(" ", "\t\r\n\u00A0\u1680\u2000\u2001\u2002\u2003\u2004\u2005\u2006\u2007\u2008\u2009\u200A\u202F\u205F\u3000");
        // Not seen: joiners, soft hyphen, byte order mark, direction marks and isolates.
        Add("", "\u00AD\u061C\u180E\u200B\u200C\u200D\u200E\u200F\u202A\u202B\u202C\u202D\u202E\u2060\u2066\u2067\u2068\u2069\uFEFF");
        Add("-", "\u2010\u2011\u2012\u2013\u2014\u2015\u2212\u02D7\u2796\uFE58\uFE63\uFF0D");
        Add("+", "\u2795\uFE62\uFF0B");
        Add("*", "\u00D7\u00B7\u22C5\u2219\u2022\u2217\u2715\u2716\u2A2F\u30FB\u0387\uFE61");
        Add("/", "\u00F7\u2044\u2215\u2797");
        Add("'", "\u2018\u2019\u201B\u02B9\u02BC\u2032\u00B4\u0060\u066C\uFF07");
        Add("\"", "\u201C\u201D\u201E\u201F\u00AB\u00BB\u2033\uFF02");
        Add("~", "\u2248\u2243\u2245\u223C\u02DC\u301C\uFF5E");
        Add("%", "\u066A\uFE6A");
        Add(",", "\u060C\u3001\uFE50");
        Add(".", "\u3002\uFE52\uFF61");
        Add(";", "\u061B\uFE54");
        Add("=", "\uFE66");
        Add("^", "\u02C6");
        foreach (var (character, fraction) in Fractions)
            table[character] = " " + fraction;
        return table;
    }

    private static IEnumerable<Rune> Runes() => Enumerable.Range(0, 0x110000).Where(Rune.IsValid).Select(value => new Rune(value));
}
