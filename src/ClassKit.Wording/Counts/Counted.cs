using System.Globalization;

namespace ClassKit.Wording.Counts;

/// <summary>Things with how many there are of them. The one place that makes plurals.</summary>
public static class Counted
{
    /// <summary>The number with what it counts: <c>1 workbook</c>, <c>24 workbooks</c>.</summary>
    /// <param name="count">How many; not negative.</param>
    /// <param name="one">What one of them is called.</param>
    /// <param name="many">What any other number of them is called; null for an s behind <paramref name="one"/>.</param>
    public static string Of(int count, string one, string? many = null) =>
        string.Create(CultureInfo.InvariantCulture, $"{count} {Noun(count, one, many)}");

    /// <summary>What is counted, without its number: <c>point</c> for 1, <c>points</c> for 0, 0.5 and 2.</summary>
    /// <inheritdoc cref="Of"/>
    public static string Noun(decimal count, string one, string? many = null) => count == 1 ? one : many ?? one + "s";
}
