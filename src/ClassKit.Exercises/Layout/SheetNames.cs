using System.Globalization;
using System.Text;

namespace ClassKit.Exercises.Layout;

/// <summary>Names that every spreadsheet program takes for a sheet.</summary>
internal static class SheetNames
{
    /// <summary>The most UTF-16 units that a sheet's name may have.</summary>
    public const int MaxLength = 31;

    /// <summary>The sheet of all exercises, where they have none of their own.</summary>
    public const string OfAll = "Exercises";

    private const string Forbidden = "[]:*?/\\";

    /// <summary>
    /// The exercise's number, which makes it unique, and as much of what it practises as fits, short enough for all tabs to be seen at
    /// once.
    /// </summary>
    /// <param name="number">From 1.</param>
    /// <param name="skill">The skill, as the exercise names it.</param>
    public static string For(int number, string skill)
    {
        var prefix = string.Create(CultureInfo.InvariantCulture, $"{number} ");
        return (prefix + Shorten(Capital(WithoutOwner(Clean(skill))), MaxLength - prefix.Length)).TrimEnd();
    }

    /// <summary>
    /// "Baker's percentage" is a percentage: an apostrophe inside a name is legal, but every reference to the sheet would have to double
    /// it.
    /// </summary>
    private static string WithoutOwner(string text)
    {
        var words = text.Split(' ');
        var owner = Array.FindLastIndex(words, word => word.Contains('\'', StringComparison.Ordinal));
        return (owner < words.Length - 1 ? string.Join(' ', words[(owner + 1)..]) : text).Replace("'", "", StringComparison.Ordinal);
    }

    private static string Capital(string text) => text.Length == 0 ? text : char.ToUpperInvariant(text[0]) + text[1..];

    private static string Clean(string title)
    {
        var text = new StringBuilder();
        foreach (var rune in title.EnumerateRunes())
        {
            text.Append(IsAllowed(rune) ? rune.ToString() : " ");
        }

        return string.Join(' ', text.ToString().Split(' ', StringSplitOptions.RemoveEmptyEntries));
    }

    private static bool IsAllowed(Rune rune) =>
        !Rune.IsControl(rune)
        && !Rune.IsWhiteSpace(rune)
        && !(rune.IsBmp && Forbidden.Contains((char)rune.Value, StringComparison.Ordinal))
        && rune != Rune.ReplacementChar
        && rune.Value is not (0xFFFE or 0xFFFF);

    private static string Shorten(string text, int length)
    {
        if (text.Length <= length)
            return text;
        var wordEnd = text.LastIndexOf(' ', length);
        if (wordEnd >= length / 2)
            return text[..wordEnd];
        return char.IsHighSurrogate(text[length - 1]) ? text[..(length - 1)] : text[..length];
    }
}
