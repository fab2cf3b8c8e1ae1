using System.Globalization;
using System.Text;
using ClassKit.CellFormulas.Values;

namespace ClassKit.CellFormulas.Functions.Formats;

/// <summary>Day numbers shown as dates and times, in English.</summary>
internal static class DateFormat
{
    public static string? Show(List<FormatPart> parts, double serial, DateSystem dates)
    {
        if (serial < 0)
            return null;
        var places = FractionPlaces(parts);
        var unit = Math.Pow(10, places);
        var total = Math.Floor(serial * 86400 * unit + 0.5) / unit;
        if (!Serial.TryDate(Math.Floor(total / 86400), dates, out var year, out var month, out var day))
            return null;
        var weekday = Serial.Weekday(Math.Floor(total / 86400), dates);
        var seconds = total - Math.Floor(total / 86400) * 86400;
        var halfDay = parts.Exists(part => part.Kind == FormatPartKind.HalfDay);
        var elapsed = string.Concat(parts.Where(part => part.Kind == FormatPartKind.Elapsed).Select(part => part.Text[0]));
        var result = new StringBuilder();
        for (var at = 0; at < parts.Count; at++)
        {
            var part = parts[at];
            _ = part.Kind switch
            {
                FormatPartKind.Elapsed => result.Append(Elapsed(part.Text, total)),
                FormatPartKind.HalfDay => result.Append(HalfDay(part.Text, seconds)),
                FormatPartKind.Date when part.Text[0] == 'm' && IsMinute(parts, at) => result.Append(
                    Padded((int)(seconds / 60) % 60, part.Text.Length)
                ),

                // Beside [h], a plain h counts all hours too.
                FormatPartKind.Date when elapsed.Contains(part.Text[0], StringComparison.Ordinal) => result.Append(
                    Elapsed(part.Text, total)
                ),
                FormatPartKind.Date => result.Append(DatePart(part.Text, year, month, day, weekday, (int)seconds, halfDay)),
                FormatPartKind.Digit => result.Append(FractionDigit(parts, at, seconds)),
                _ => result.Append(part.Text),
            };
        }

        return result.ToString();
    }

    private static string DatePart(string letters, int year, int month, int day, int weekday, int seconds, bool halfDay) =>
        letters switch
        {
            "y" or "yy" => Padded(year % 100, 2),
            ['y', ..] => Padded(year, 4),
            "m" or "mm" => Padded(month, letters.Length),
            "mmm" => CultureInfo.InvariantCulture.DateTimeFormat.AbbreviatedMonthNames[month - 1],
            "mmmmm" => CultureInfo.InvariantCulture.DateTimeFormat.MonthNames[month - 1][..1],
            ['m', ..] => CultureInfo.InvariantCulture.DateTimeFormat.MonthNames[month - 1],
            "d" or "dd" => Padded(day, letters.Length),
            "ddd" => CultureInfo.InvariantCulture.DateTimeFormat.AbbreviatedDayNames[weekday],
            ['d', ..] => CultureInfo.InvariantCulture.DateTimeFormat.DayNames[weekday],
            ['h', ..] => Padded(halfDay ? (seconds / 3600 + 11) % 12 + 1 : seconds / 3600, letters.Length),
            _ => Padded(seconds % 60, letters.Length),
        };

    private static string HalfDay(string signs, double seconds)
    {
        var slash = signs.IndexOf('/', StringComparison.Ordinal);
        return seconds < 12 * 3600 ? signs[..slash] : signs[(slash + 1)..];
    }

    private static string Elapsed(string letters, double total)
    {
        var count = Math.Floor(
            letters[0] switch
            {
                'h' => total / 3600,
                'm' => total / 60,
                _ => total,
            }
        );
        return count.ToString("F0", CultureInfo.InvariantCulture).PadLeft(letters.Length, '0');
    }

    private static string Padded(int number, int length) => number.ToString(CultureInfo.InvariantCulture).PadLeft(Math.Min(length, 4), '0');

    /// <summary>An m is minutes right after hours or seconds, or right before seconds.</summary>
    private static bool IsMinute(List<FormatPart> parts, int at)
    {
        if (parts[at].Text.Length > 2)
            return false;
        var before = parts.Take(at).LastOrDefault(IsTime);
        var after = parts.Skip(at + 1).FirstOrDefault(IsTime);
        return before.Text is ['h' or 's', ..] || after.Text is ['s', ..];
    }

    private static bool IsTime(FormatPart part) => part.Kind is FormatPartKind.Date or FormatPartKind.Elapsed;

    private static int FractionPlaces(List<FormatPart> parts) => parts.Count(part => part.Kind == FormatPartKind.Digit);

    private static char FractionDigit(List<FormatPart> parts, int at, double seconds)
    {
        var place = parts.Take(at).Count(part => part.Kind == FormatPartKind.Digit);
        var digits = (seconds - Math.Floor(seconds)).ToString(
            "F" + FractionPlaces(parts).ToString(CultureInfo.InvariantCulture),
            CultureInfo.InvariantCulture
        );
        return digits[2 + place];
    }
}
