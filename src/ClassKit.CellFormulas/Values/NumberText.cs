using System.Globalization;
using ClassKit.CellFormulas.Budget;

namespace ClassKit.CellFormulas.Values;

/// <summary>Numbers as texts and texts as numbers, always as an English-language spreadsheet has them.</summary>
internal static class NumberText
{
    private const int SignificantDigits = 15;

    /// <summary>
    /// The number as a cell without a format holds it: 15 significant digits, an exponent only for very large and very small numbers.
    /// </summary>
    public static string General(double number)
    {
        if (number == 0)
            return "0";
        if (number == Math.Floor(number) && Math.Abs(number) < 1e15)
            return ((long)number).ToString(CultureInfo.InvariantCulture);
        var scientific = number.ToString("E14", CultureInfo.InvariantCulture);
        var mark = scientific.IndexOf('E', StringComparison.Ordinal);
        var exponent = int.Parse(scientific.AsSpan(mark + 1), NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture);
        var negative = scientific[0] == '-';
        var digits = string.Concat(scientific.AsSpan(negative ? 1 : 0, 1), scientific.AsSpan(negative ? 3 : 2, SignificantDigits - 1))
            .TrimEnd('0');
        return (negative ? "-" : "") + (exponent is < -9 or > 20 ? Scientific(digits, exponent) : Plain(digits, exponent));
    }

    /// <summary>
    /// The number with that many decimal places, all digits past the fifteenth 0. It must be rounded to them already, and not be negative.
    /// </summary>
    public static string Fixed(double number, int places)
    {
        var scientific = number.ToString("E14", CultureInfo.InvariantCulture);
        var exponent = int.Parse(
            scientific.AsSpan(scientific.IndexOf('E', StringComparison.Ordinal) + 1),
            NumberStyles.AllowLeadingSign,
            CultureInfo.InvariantCulture
        );
        var digits = string.Concat(scientific.AsSpan(0, 1), scientific.AsSpan(2, SignificantDigits - 1));
        if (exponent < 0)
            (digits, exponent) = (new string('0', -exponent) + digits, 0);
        digits = digits.PadRight(exponent + 1 + places, '0');
        return places == 0
            ? digits[..(exponent + 1)]
            : string.Concat(digits.AsSpan(0, exponent + 1), ".", digits.AsSpan(exponent + 1, places));
    }

    /// <summary>What trying the forms of dates and times takes, in steps.</summary>
    private const int CostOfDates = 40;

    /// <summary>As <see cref="TryParse(string, out double)"/>, counted.</summary>
    public static bool TryParse(string text, Meter meter, out double number)
    {
        number = 0;
        meter.TakeForCharacters(text.Length);
        if (!text.AsSpan().ContainsAnyInRange('0', '9'))
            return false;
        meter.Spend(text.AsSpan().ContainsAny("/-: ") ? CostOfDates : 1);
        return TryParse(text, out number);
    }

    /// <summary>
    /// Reads a text as a cell would if it were typed: a number with or without thousands commas, a percentage, an amount in dollars, a date
    /// or a time.
    /// </summary>
    public static bool TryParse(string text, out double number)
    {
        number = 0;
        var rest = text.AsSpan().Trim(" \t\r\n\u00a0");
        if (rest.Length is 0 or > 100)
            return false;
        return TryPlain(rest, out number) || DateText.TryParse(rest, out number);
    }

    private static bool TryPlain(ReadOnlySpan<char> text, out double number)
    {
        number = 0;
        var percent = 0;
        while (text.EndsWith("%"))
        {
            percent++;
            text = text[..^1].TrimEnd();
        }

        var negative = text.StartsWith("(") && text.EndsWith(")");
        if (negative)
            text = text[1..^1];
        if (text.StartsWith("-") || (!negative && text.StartsWith("+")))
        {
            if (negative)
                return false;
            negative = text[0] == '-';
            text = text[1..];
        }

        if (text.StartsWith("$"))
            text = text[1..];
        if (text.IsEmpty || !(char.IsAsciiDigit(text[0]) || text[0] == '.'))
            return false;
        if (text.Contains(',') && !GroupsOfThree(text))
            return false;
        if (
            !double.TryParse(
                text,
                NumberStyles.AllowDecimalPoint | NumberStyles.AllowExponent | NumberStyles.AllowThousands,
                CultureInfo.InvariantCulture,
                out number
            )
        )
            return false;
        if (!double.IsFinite(number))
            return false;
        for (; percent > 0; percent--)
            number /= 100;
        if (negative)
            number = -number;
        return true;
    }

    // A comma elsewhere is somebody's decimal comma, and to guess would be worse than to say so.
    private static bool GroupsOfThree(ReadOnlySpan<char> text)
    {
        var end = text.IndexOfAny('.', 'e', 'E');
        if (end < 0)
            end = text.Length;
        if (text[end..].Contains(','))
            return false;
        var digits = 0;
        for (var at = end - 1; at >= 0; at--)
        {
            if (text[at] == ',')
            {
                if (digits != 3)
                    return false;
                digits = 0;
            }
            else
            {
                digits++;
            }
        }

        return digits is > 0 and <= 3;
    }

    private static string Scientific(string digits, int exponent) =>
        string.Create(
            CultureInfo.InvariantCulture,
            $"{digits[0]}{(digits.Length > 1 ? "." : "")}{digits.AsSpan(1)}E{(exponent < 0 ? '-' : '+')}{Math.Abs(exponent):00}"
        );

    private static string Plain(string digits, int exponent)
    {
        if (exponent < 0)
            return "0." + new string('0', -exponent - 1) + digits;
        if (digits.Length <= exponent + 1)
            return digits.PadRight(exponent + 1, '0');
        return string.Concat(digits.AsSpan(0, exponent + 1), ".", digits.AsSpan(exponent + 1));
    }
}
