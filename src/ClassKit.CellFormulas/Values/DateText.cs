using System.Globalization;

namespace ClassKit.CellFormulas.Values;

/// <summary>
/// Dates and times typed as text, as an English-language (US) spreadsheet reads them; day numbers are those of the 1900 system.
/// </summary>
internal static class DateText
{
    private static readonly string[] Dates =
    [
        "yyyy-M-d",
        "yyyy/M/d",
        "M/d/yyyy",
        "M-d-yyyy",
        "d-MMM-yyyy",
        "d MMM yyyy",
        "d MMMM yyyy",
        "d-MMMM-yyyy",
        "MMM d, yyyy",
        "MMMM d, yyyy",
        "M/d/yy",
        "d-MMM-yy",
        "d MMM yy",
    ];

    private static readonly string[] Times = ["H:m", "H:m:s", "H:m:s.FFF", "h:m tt", "h:m:s tt", "h tt"];

    /// <summary>A date, a time, or both with a space or a T between.</summary>
    public static bool TryParse(ReadOnlySpan<char> text, out double serial)
    {
        const int Longest = 40;
        serial = 0;
        if (text.Length > Longest || !text.ContainsAny("/-: "))
            return false;
        if (TryTime(text, out serial) || TryDate(text, out serial))
            return true;
        for (var at = text.Length - 1; at > 0; at--)
        {
            if (text[at] is not (' ' or 'T'))
                continue;
            if (!TryTime(text[(at + 1)..], out var time) || !TryDate(text[..at].TrimEnd(), out var date))
                continue;
            serial = date + time;
            return true;
        }

        return false;
    }

    /// <summary>Whether a text that reads as a number is a date, perhaps with a time.</summary>
    public static bool HasDate(string text) =>
        TryParse(text.AsSpan().Trim(), out var serial) && !TryTime(text.AsSpan().Trim(), out _) && serial >= 1;

    /// <summary>A date without a time.</summary>
    public static bool TryDate(ReadOnlySpan<char> text, out double serial)
    {
        serial = 0;
        if (!DateTime.TryParseExact(text, Dates, CultureInfo.InvariantCulture, DateTimeStyles.None, out var date))
            return false;
        if (date.Year < 1900)
            return false;
        serial = Serial.Of(date, DateSystem.From1900);
        return true;
    }

    /// <summary>A time of day as a fraction of one; hours may go past 24.</summary>
    public static bool TryTime(ReadOnlySpan<char> text, out double fraction)
    {
        fraction = 0;
        if (DateTime.TryParseExact(text, Times, CultureInfo.InvariantCulture, DateTimeStyles.NoCurrentDateDefault, out var time))
        {
            fraction = time.TimeOfDay.TotalDays;
            return true;
        }

        var colon = text.IndexOf(':');
        if (colon is < 1 or > 4 || !int.TryParse(text[..colon], NumberStyles.None, CultureInfo.InvariantCulture, out var hours))
            return false;
        var rest = text[(colon + 1)..];
        var second = rest.IndexOf(':');
        var minuteText = second < 0 ? rest : rest[..second];
        var seconds = 0.0;
        if (
            minuteText.Length is 0 or > 2
            || !int.TryParse(minuteText, NumberStyles.None, CultureInfo.InvariantCulture, out var minutes)
            || minutes > 59
        )
            return false;
        if (
            second >= 0
            && !(
                double.TryParse(rest[(second + 1)..], NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out seconds)
                && seconds < 60
            )
        )
            return false;
        fraction = (hours * 3600.0 + minutes * 60 + seconds) / 86400;
        return true;
    }
}
