using ClassKit.CellFormulas.Sheets;
using ClassKit.Wording.Counts;

namespace ClassKit.Wording.Numbers;

/// <summary>Small turns of phrase that pages share.</summary>
public static class Phrases
{
    /// <summary>The letter of a part, counted from 0.</summary>
    // The same letters as spreadsheet columns: after z comes aa.
    public static string Letter(int part) => CellAddress.ColumnLetters(part + 1).ToLowerInvariant();

    /// <summary>"1 part", "2 parts".</summary>
    public static string Count(decimal number, string singular, string? plural = null) =>
        $"{NumberText.Exact(number, 4)} {Counted.Noun(number, singular, plural)}";

    /// <summary>Words as a sentence: a capital letter to begin with, a point to end.</summary>
    public static string Sentence(string words) => words.Length == 0 ? "" : $"{char.ToUpperInvariant(words[0])}{words[1..].TrimEnd('.')}.";

    /// <summary>More names than these nobody reads in a sentence.</summary>
    public const int MostNames = 60;

    /// <summary>"a, b, c", and of many the first ones and how many more there are.</summary>
    public static string Some(IReadOnlyList<string> names)
    {
        ArgumentNullException.ThrowIfNull(names);
        return names.Count <= MostNames
            ? string.Join(Between(names), names)
            : $"{string.Join(Between(names), names.Take(MostNames))} and {NumberText.Exact(names.Count - MostNames, 0)} more";
    }

    /// <summary>"a", "a and b", "a, b and c", and of many the first ones and how many more there are.</summary>
    public static string Names(IReadOnlyList<string> names)
    {
        ArgumentNullException.ThrowIfNull(names);
        return names.Count > MostNames ? Some(names)
            : names.Count < 2 ? List(names)
            : $"{string.Join(Between(names), names.Take(names.Count - 1))} and {names[^1]}";
    }

    /// <summary>Fuentes Vidal, Jorge is one person, and would be two in a list with commas.</summary>
    private static string Between(IReadOnlyList<string> names) =>
        names.Any(name => name.Contains(',', StringComparison.Ordinal)) ? "; " : ", ";

    /// <summary>"a", "a and b", "a, b and c".</summary>
    public static string List(IReadOnlyList<string> items) =>
        items.Count switch
        {
            0 => "",
            1 => items[0],
            _ => string.Join(", ", items.Take(items.Count - 1)) + " and " + items[^1],
        };
}
