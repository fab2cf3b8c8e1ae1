using System.Globalization;

namespace ClassKit.Records.Storage;

/// <summary>How values stand in columns.</summary>
internal static class Values
{
    public const string DayFormat = "yyyy-MM-dd";

    /// <summary>Divides away the zeros that a decimal drags behind its point: 7.50 and 7.5 are one number and one text.</summary>
    private const decimal One = 1.000000000000000000000000000000000m;

    public static object Stored(object? value) =>
        value switch
        {
            null => DBNull.Value,
            decimal points => (points / One).ToString(CultureInfo.InvariantCulture),
            DateOnly day => day.ToString(DayFormat, CultureInfo.InvariantCulture),
            DateTimeOffset moment => moment.ToString("O", CultureInfo.InvariantCulture),
            bool yes => yes ? 1L : 0L,
            _ => value,
        };

    /// <summary>A text that may be absent, and is never empty.</summary>
    public static string? OrNull(string? text) => string.IsNullOrEmpty(text) ? null : text;
}
