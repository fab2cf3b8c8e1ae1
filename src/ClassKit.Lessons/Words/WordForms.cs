using System.Text.RegularExpressions;

namespace ClassKit.Lessons.Words;

/// <summary>
/// Whole words in the forms that an author may write them in: <c>burner</c>, <c>burners</c>; <c>boil</c>, <c>boils</c>, <c>boiled</c>,
/// <c>boiling</c>. Never part of a longer word: oil is not in <c>boiling</c>.
/// </summary>
internal static class WordForms
{
    /// <summary>A pattern of all of them; what is irregular is written in each form: <c>knife</c> and <c>knives</c>.</summary>
    /// <param name="words">In the singular, or as a verb is called; of several words the first or the last has forms.</param>
    public static string AnyOf(params string[] words) => $@"\b(?:{string.Join('|', words.Select(Of))})\b";

    /// <summary>True where a text has one of them.</summary>
    public static Regex Of(params string[] words) => new(AnyOf(words), RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    private static string Of(string word)
    {
        var parts = word.Split(' ');
        return string.Join(@"[\s-]+", parts.Select((part, at) => at == 0 || at == parts.Length - 1 ? Forms(part) : Regex.Escape(part)));
    }

    private static string Forms(string word) =>
        word[^1] switch
        {
            'e' => $"{Regex.Escape(word[..^1])}(?:e|es|ed|ing)",
            'y' => $"{Regex.Escape(word[..^1])}(?:y|ies|ied|ying)",
            var last => $"{Regex.Escape(word)}(?:s|es|{last}?ed|{last}?ing)?",
        };
}
