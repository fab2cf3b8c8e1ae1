using System.Text.RegularExpressions;

namespace ClassKit.Grading;

/// <summary>Tells our words from typed ones in a text that has both, such as why a formula cannot be read.</summary>
internal static partial class TypedWords
{
    /// <summary>The words in a text.</summary>
    public static IEnumerable<string> Of(string text) => Word().Matches(text).Select(word => word.Value);

    /// <summary>The text, in which words that were typed are a student's own, with whatever stands between them.</summary>
    /// <param name="text">Ours, with typed words in it.</param>
    /// <param name="typed">The words that were typed.</param>
    public static PartlyTyped In(string text, IEnumerable<string> typed)
    {
        var own = typed.ToHashSet(StringComparer.OrdinalIgnoreCase);
        var pieces = new List<TextPiece>();
        var (said, from, to) = (0, -1, -1);
        foreach (Match word in Word().Matches(text))
        {
            if (own.Contains(word.Value)) (from, to) = (from < 0 ? word.Index : from, word.Index + word.Length);
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
