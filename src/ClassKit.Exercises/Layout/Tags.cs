using System.Globalization;
using ClassKit.CellFormulas.Sheets;

namespace ClassKit.Exercises.Layout;

/// <summary>The marks in the first column that name a row to a reader and anchor it for the grader.</summary>
/// <remarks>Neither kind reads like a cell: <c>1a</c> has the number first, and roman numerals have no number at all.</remarks>
public static class Tags
{
    private const int MostLength = 12;

    private static readonly (int Value, string Numeral)[] Numerals =
    [
        (100, "c"),
        (90, "xc"),
        (50, "l"),
        (40, "xl"),
        (10, "x"),
        (9, "ix"),
        (5, "v"),
        (4, "iv"),
        (1, "i"),
    ];

    /// <summary>True for a text that may be a tag of an answer or a given.</summary>
    public static bool IsTag(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        if (text.Length is 0 or > MostLength)
            return false;
        Span<char> lowered = stackalloc char[MostLength];
        var lower = lowered[..text.AsSpan().ToLowerInvariant(lowered)];
        var letters = lower.TrimStart("0123456789");
        return letters.Length == lower.Length
            ? !lower.ContainsAnyExcept("ivxlc")
            : letters.Length > 0 && !letters.ContainsAnyExceptInRange('a', 'z');
    }

    /// <summary>The tag of an answer: 1a, 1b, ..., 1z, 1aa.</summary>
    public static string OfAnswer(int exercise, int index) =>
        string.Create(CultureInfo.InvariantCulture, $"{exercise}{CellAddress.ColumnLetters(index + 1).ToLowerInvariant()}");

    /// <summary>The tag of a given: i, ii, iii, iv, ...</summary>
    public static string OfGiven(int index)
    {
        var rest = index + 1;
        var tag = "";
        foreach (var (value, numeral) in Numerals)
        {
            for (; rest >= value; rest -= value)
                tag += numeral;
        }

        return tag;
    }
}
