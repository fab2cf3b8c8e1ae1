using ClassKit.CellFormulas.Sheets;

namespace ClassKit.Grading.Answers;

/// <summary>An answer in a student's own words: text and nothing else, and no more of it than somebody reads.</summary>
/// <param name="Text">The words, at most <see cref="Most"/> characters; lines end in a line feed.</param>
/// <param name="Length">How many characters the student wrote.</param>
public sealed record TypedWords(string Text, int Length)
{
    /// <summary>More than three hundred words, which no short answer needs; common practice, no source.</summary>
    public const int Most = 2_000;

    /// <summary>
    /// Reads what stands in a cell; null if no word does. What begins like a formula is taken as it was typed: nothing in it is worked out.
    /// </summary>
    internal static TypedWords? Read(CellContent? content)
    {
        if (content is null)
            return null;
        var typed = content.Formula is { } formula ? "=" + formula : content.Stored.ToString();
        var text = string.Concat(
                typed.ReplaceLineEndings("\n").Select(character => character is '\n' || !char.IsControl(character) ? character : ' ')
            )
            .Trim();
        if (text.Length == 0)
            return null;
        return new(text.Length <= Most ? text : Cut(text), text.Length);
    }

    /// <summary>No character that takes two places is cut in half.</summary>
    private static string Cut(string text) => text[..(char.IsHighSurrogate(text[Most - 1]) ? Most - 1 : Most)];
}
