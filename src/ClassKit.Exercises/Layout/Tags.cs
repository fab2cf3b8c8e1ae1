using System.Globalization;
using ClassKit.CellFormulas;

namespace ClassKit.Exercises;

/// <summary>The marks in the first column that name a row to a reader and anchor it for the grader.</summary>
/// <remarks>Neither kind reads like a cell: <c>1a</c> has the number first, and roman numerals have no number at all.</remarks>
internal static class Tags
{
    private static readonly (int Value, string Numeral)[] Numerals =
        [(100, "c"), (90, "xc"), (50, "l"), (40, "xl"), (10, "x"), (9, "ix"), (5, "v"), (4, "iv"), (1, "i")];

    /// <summary>The tag of an answer: 1a, 1b, ..., 1z, 1aa.</summary>
    public static string OfAnswer(int exercise, int index) => string.Create(
        CultureInfo.InvariantCulture, $"{exercise}{CellAddress.ColumnLetters(index + 1).ToLowerInvariant()}");

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
