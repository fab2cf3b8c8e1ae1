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

    private const string Forbidden = "[]:*?/\\'";

    /// <summary>The exercise's number and as much of its title as fits; the number makes it unique.</summary>
    public static string For(int number, string title)
    {
        var prefix = string.Create(CultureInfo.InvariantCulture, $"{number} ");
        return (prefix + Shorten(Clean(title), MaxLength - prefix.Length)).TrimEnd();
    }

    private static string Clean(string title)
    {
        var text = new StringBuilder();
        foreach (var rune in title.EnumerateRunes())
        {
            // An apostrophe inside a name is legal, but every reference to the sheet would have to double it.
            if (rune.Value == '\'') continue;
            text.Append(IsAllowed(rune) ? rune.ToString() : " ");
        }

        return string.Join(' ', text.ToString().Split(' ', StringSplitOptions.RemoveEmptyEntries));
    }

    private static bool IsAllowed(Rune rune) =>
        !Rune.IsControl(rune) && !Rune.IsWhiteSpace(rune) && !(rune.IsBmp && Forbidden.Contains((char)rune.Value, StringComparison.Ordinal))
        && rune != Rune.ReplacementChar && rune.Value is not (0xFFFE or 0xFFFF);

    private static string Shorten(string text, int length)
    {
        if (text.Length <= length) return text;
        var wordEnd = text.LastIndexOf(' ', length);
        if (wordEnd >= length / 2) return text[..wordEnd];
        return char.IsHighSurrogate(text[length - 1]) ? text[..(length - 1)] : text[..length];
    }
}
