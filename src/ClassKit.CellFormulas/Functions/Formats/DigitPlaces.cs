using System.Text;

namespace ClassKit.CellFormulas.Functions.Formats;

/// <summary>Lays digits out over the places <c>0</c>, <c>#</c> and <c>?</c> of a format, with the texts that stand between them.</summary>
internal static class DigitPlaces
{
    /// <summary>Fills the places from the right; what is left over comes before the first of them.</summary>
    public static string Whole(IReadOnlyList<FormatPart> parts, string digits, bool grouped)
    {
        var result = new StringBuilder();
        var (left, places) = (digits.Length, 0);
        var first = FirstPlace(parts);
        for (var at = parts.Count - 1; at >= 0; at--)
        {
            var part = parts[at];
            if (part.Kind != FormatPartKind.Digit)
            {
                result.Insert(0, part.Text);
                continue;
            }

            if (left > 0)
                Put(digits[--left], ',');
            else if (part.Text == "0")
                Put('0', ',');
            else if (part.Text == "?")
                Put(' ', ' ');
            while (at == first && left > 0)
                Put(digits[--left], ',');
        }

        return result.ToString();

        void Put(char digit, char separator)
        {
            if (grouped && places > 0 && places % 3 == 0)
                result.Insert(0, separator);
            result.Insert(0, digit);
            places++;
        }
    }

    /// <summary>
    /// Fills the places after a point from the left; zeros at the end show only where the format has <c>0</c>, as a space where it has
    /// <c>?</c>.
    /// </summary>
    public static string AfterPoint(IEnumerable<FormatPart> parts, string digits)
    {
        var result = new StringBuilder();
        var used = digits.TrimEnd('0').Length;
        var at = 0;
        foreach (var part in parts)
        {
            if (part.Kind != FormatPartKind.Digit)
            {
                result.Append(part.Text);
                continue;
            }

            if (at < used || part.Text == "0")
                result.Append(digits[at]);
            else if (part.Text == "?")
                result.Append(' ');
            at++;
        }

        return result.ToString();
    }

    public static int Count(IEnumerable<FormatPart> parts) => parts.Count(part => part.Kind == FormatPartKind.Digit);

    private static int FirstPlace(IReadOnlyList<FormatPart> parts)
    {
        for (var at = 0; at < parts.Count; at++)
        {
            if (parts[at].Kind == FormatPartKind.Digit)
                return at;
        }

        return -1;
    }
}
