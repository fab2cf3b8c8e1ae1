using System.Text;
using AnyAscii;

namespace ClassKit.Exercises.Cohorts;

/// <summary>
/// The words of a name in plain letters, so that they can be compared whatever a program did to accents, case and spaces.
/// </summary>
/// <remarks>
/// Accents may stand in one character with their letter or by themselves; without ICU .NET cannot tell that the two are the same, so both
/// are transliterated to ASCII (AnyAscii). Umlauts are also written out the German and Scandinavian way.
/// </remarks>
public static class FoldedWords
{
    private static readonly (string Accented, string WrittenOut)[] Digraphs =
    [
        ("ä", "ae"),
        ("ö", "oe"),
        ("ü", "ue"),
        ("å", "aa"),
        ("ø", "oe"),
        ("a\u0308", "ae"),
        ("o\u0308", "oe"),
        ("u\u0308", "ue"),
        ("a\u030A", "aa"),
    ];

    /// <summary>The words, split where a space, a sign, a digit or a capital begins something new.</summary>
    public static IReadOnlyList<string> Of(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        var words = new List<string>();
        var word = new StringBuilder();
        var before = '\0';
        foreach (var character in text.Transliterate())
        {
            // Nobody keeps the apostrophe of O'Connor in a file name.
            if (character is '\'' or '`')
                continue;
            if (word.Length > 0 && (!char.IsAsciiLetterOrDigit(character) || IsSeam(before, character)))
            {
                words.Add(word.ToString());
                word.Clear();
            }

            if (char.IsAsciiLetterOrDigit(character))
                word.Append(char.ToLowerInvariant(character));
            before = character;
        }

        if (word.Length > 0)
            words.Add(word.ToString());
        return words;
    }

    /// <summary>The words with umlauts written out: <c>Müller</c> as <c>mueller</c>.</summary>
    public static IReadOnlyList<string> WrittenOut(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        text = text.ToLowerInvariant();
        foreach (var (accented, writtenOut) in Digraphs)
            text = text.Replace(accented, writtenOut, StringComparison.Ordinal);
        return Of(text);
    }

    private static bool IsSeam(char before, char after) =>
        (char.IsAsciiLetterLower(before) && char.IsAsciiLetterUpper(after)) || char.IsAsciiDigit(before) != char.IsAsciiDigit(after);
}
