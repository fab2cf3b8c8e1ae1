using ClassKit.Exercises.Authoring;

namespace ClassKit.Wording.Answers;

/// <summary>
/// What a known wrong turn is called where there is no room for all of its words: its first sentence, which says what went wrong. Ids are
/// for files.
/// </summary>
public static class WrongTurnName
{
    /// <summary>The name, without its full stop.</summary>
    public static string Of(Misconception misconception)
    {
        ArgumentNullException.ThrowIfNull(misconception);
        var words = misconception.Words;
        // A point within a number or an abbreviation is followed by no capital letter.
        var end = Enumerable
            .Range(0, words.Length)
            .FirstOrDefault(
                at =>
                    words[at] is '.' or '!' or '?'
                    && (at == words.Length - 1 || (at + 2 < words.Length && words[at + 1] == ' ' && char.IsUpper(words[at + 2]))),
                words.Length - 1
            );
        return words[..(end + 1)].TrimEnd('.');
    }
}
