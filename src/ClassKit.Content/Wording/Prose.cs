using System.Text.RegularExpressions;

namespace ClassKit.Content.Wording;

/// <summary>Text made fit for one line.</summary>
internal static partial class Prose
{
    /// <summary>The text with every run of white space as one space.</summary>
    public static string OneLine(string text) => WhiteSpace().Replace(text, " ").Trim();

    /// <summary>The beginning of the text, with dots where it goes on.</summary>
    public static string Excerpt(string text, int length = 50) => text.Length <= length ? text : text[..length].TrimEnd() + " ...";

    [GeneratedRegex(@"\s+")]
    private static partial Regex WhiteSpace();
}
