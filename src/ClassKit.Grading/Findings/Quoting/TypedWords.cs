using System.Globalization;
using System.Text.RegularExpressions;

namespace ClassKit.Grading.Findings.Quoting;

/// <summary>Tells our words from typed ones in a text that has both, such as why a formula cannot be read.</summary>
internal static partial class TypedWords
{
    /// <summary>True if a word stands in a text by itself, in any case. Nothing is kept of the text, which may be one of many.</summary>
    public static bool Stands(string text, string word)
    {
        for (var at = text.IndexOf(word, StringComparison.OrdinalIgnoreCase); at >= 0; at = text.IndexOf(word, at + 1, StringComparison.OrdinalIgnoreCase))
        {
            if ((at == 0 || !IsOfWord(text[at - 1])) && (at + word.Length == text.Length || !IsOfWord(text[at + word.Length]))) return true;
        }
        return false;
    }

    private static bool IsOfWord(char character) =>
        char.IsLetter(character) || char.GetUnicodeCategory(character) is UnicodeCategory.NonSpacingMark or UnicodeCategory.SpacingCombiningMark or UnicodeCategory.EnclosingMark or UnicodeCategory.DecimalDigitNumber;

    /// <summary>The text, in which words that were typed are a student's own, with whatever stands between them.</summary>
    /// <param name="text">Ours, with typed words in it.</param>
    /// <param name="isTyped">Whether a word was.</param>
    public static PartlyTyped In(string text, Func<string, bool> isTyped)
    {
        var pieces = new List<TextPiece>();
        var (said, from, to) = (0, -1, -1);
        foreach (Match word in Word().Matches(text))
        {
            if (isTyped(word.Value)) (from, to) = (from < 0 ? word.Index : from, word.Index + word.Length);
            else End();
        }

        End();
        pieces.Add(new(text[said..], IsTyped: false));
        return new(pieces);

        void End()
        {
            if (from < 0) return;
            pieces.Add(new(text[said..from], IsTyped: false));
            pieces.Add(new(text[from..to], IsTyped: true));
            (said, from) = (to, -1);
        }
    }

    /// <summary>The text, in which whatever stands between single quotes is a student's own, such as the name of a sheet in the reason why a file was refused.</summary>
    public static PartlyTyped InQuotes(string text)
    {
        var pieces = new List<TextPiece>();
        var said = 0;
        foreach (Match quoted in Quoted().Matches(text))
        {
            pieces.Add(new(text[said..quoted.Index], IsTyped: false));
            pieces.Add(new(quoted.Value, IsTyped: true));
            said = quoted.Index + quoted.Length;
        }

        pieces.Add(new(text[said..], IsTyped: false));
        return new(pieces);
    }

    /// <summary>From a quote that begins a word to one that ends a word, since O'Hara is a name.</summary>
    [GeneratedRegex(@"(?<=^|[\s(])'.+?'(?![\p{L}])", RegexOptions.CultureInvariant)]
    private static partial Regex Quoted();

    [GeneratedRegex(@"[\p{L}\p{M}\p{Nd}]+", RegexOptions.CultureInvariant)]
    private static partial Regex Word();
}
