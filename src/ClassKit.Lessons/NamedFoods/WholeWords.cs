using System.Globalization;

namespace ClassKit.Lessons.NamedFoods;

/// <summary>Takes words out of a text without moving what follows.</summary>
internal static class WholeWords
{
    /// <summary>The text with blanks where words stand by themselves, in any letter case.</summary>
    public static string Blanked(string text, string words)
    {
        for (var at = 0; (at = text.IndexOf(words, at, StringComparison.OrdinalIgnoreCase)) >= 0; at++)
        {
            if (IsEdge(text, at) && IsEdge(text, at + words.Length))
                text = Blanked(text, at, words.Length);
        }
        return text;
    }

    /// <summary>The text with blanks in a place.</summary>
    public static string Blanked(string text, int start, int length) =>
        string.Concat(text.AsSpan(0, start), new string(' ', length), text.AsSpan(start + length));

    /// <summary>
    /// True if a word begins or ends at a place: of the characters around it, one belongs to a word and the other does not.
    /// </summary>
    private static bool IsEdge(string text, int at) => (at > 0 && IsOfWord(text[at - 1])) != (at < text.Length && IsOfWord(text[at]));

    private static bool IsOfWord(char letter) =>
        char.IsLetterOrDigit(letter)
        || char.GetUnicodeCategory(letter) is UnicodeCategory.NonSpacingMark or UnicodeCategory.ConnectorPunctuation;
}
