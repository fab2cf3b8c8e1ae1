using System.Globalization;

namespace ClassKit.Baking.Household;

/// <summary>Numbers as kitchens write them: <c>1 3/4</c>.</summary>
public static class KitchenFraction
{
    private const double Whole = 1e-9;

    /// <summary>The fractions that measuring cups and spoons have: eighths, and thirds.</summary>
    private static readonly int[] Denominators = [2, 3, 4, 8];

    /// <summary>
    /// A number as a whole number and a fraction, rounded to the nearest <c>1/denominator</c> (halves away from zero): 1.75 is <c>1
    /// 3/4</c>.
    /// </summary>
    /// <param name="value">Not negative.</param>
    /// <param name="denominator">The finest fraction; above 0.</param>
    public static string Show(double value, int denominator)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(value);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(denominator);
        var parts = (long)Math.Round(value * denominator + Whole, MidpointRounding.AwayFromZero);
        var whole = parts / denominator;
        var rest = parts % denominator;
        if (rest == 0)
            return whole.ToString(CultureInfo.InvariantCulture);
        var common = (long)System.Numerics.BigInteger.GreatestCommonDivisor(rest, denominator);
        var fraction = string.Create(CultureInfo.InvariantCulture, $"{rest / common}/{denominator / common}");
        return whole == 0 ? fraction : string.Create(CultureInfo.InvariantCulture, $"{whole} {fraction}");
    }

    /// <summary>
    /// Reads <c>2</c>, <c>0.75</c>, <c>3/4</c>, <c>1 3/4</c>, <c>1-3/4</c> and the signs ¼ ½ ¾ ⅓ ⅔ ⅛ ⅜ ⅝ ⅞, alone or behind a whole number.
    /// </summary>
    /// <param name="text">As typed; a decimal point, no comma.</param>
    /// <param name="value">What was read; not negative, 0 if nothing was.</param>
    public static bool TryParse(string text, out double value)
    {
        ArgumentNullException.ThrowIfNull(text);
        value = 0;
        var spaced = string.Concat(
                text.Trim().Select(letter => Signs.TryGetValue(letter, out var fraction) ? " " + fraction : letter.ToString())
            )
            .Replace('-', ' ');
        var words = spaced.Split(' ', StringSplitOptions.RemoveEmptyEntries);
        return words.Length switch
        {
            1 => TryDecimal(words[0], out value) || TryFraction(words[0], out value),
            2
                when long.TryParse(words[0], NumberStyles.None, CultureInfo.InvariantCulture, out var whole)
                    && TryFraction(words[1], out var fraction) => Set(whole + fraction, out value),
            _ => false,
        };
    }

    /// <summary>The nearest number that measuring cups can show: whole, or with a half, third, quarter or, if asked, eighth.</summary>
    internal static (string Text, double Value) Nearest(double value, bool eighths)
    {
        var denominator = Denominators
            .Where(candidate => eighths || candidate != 8)
            .MinBy(candidate => Math.Abs(Rounded(value, candidate) - value) + candidate * Whole);
        return (Show(value, denominator), Rounded(value, denominator));
    }

    internal static double Rounded(double value, int denominator) =>
        Math.Round(value * denominator + Whole, MidpointRounding.AwayFromZero) / denominator;

    private static bool TryDecimal(string word, out double value) =>
        double.TryParse(word, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out value) && double.IsFinite(value);

    private static bool TryFraction(string word, out double value)
    {
        value = 0;
        var slash = word.Split('/');
        return slash.Length == 2
            && long.TryParse(slash[0], NumberStyles.None, CultureInfo.InvariantCulture, out var above)
            && long.TryParse(slash[1], NumberStyles.None, CultureInfo.InvariantCulture, out var below)
            && below > 0
            && Set((double)above / below, out value);
    }

    private static bool Set(double number, out double value)
    {
        value = number;
        return true;
    }

    private static readonly Dictionary<char, string> Signs = new()
    {
        ['¼'] = "1/4",
        ['½'] = "1/2",
        ['¾'] = "3/4",
        ['⅓'] = "1/3",
        ['⅔'] = "2/3",
        ['⅛'] = "1/8",
        ['⅜'] = "3/8",
        ['⅝'] = "5/8",
        ['⅞'] = "7/8",
        ['⁄'] = "/",
    };
}
