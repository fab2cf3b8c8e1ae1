using ClassKit.Exercises.Authoring;
using ClassKit.Exercises.Texts;

namespace ClassKit.Workbooks.Look;

/// <summary>How cells show their numbers. A format never changes a value.</summary>
internal static class NumberFormats
{
    private const int MostDecimals = 6;

    /// <summary>A given with the decimals that its steps need.</summary>
    public static string Of(Given given) => Fixed(GivenText.Decimals(given), given.Unit.IsPercent);

    /// <summary>An answer with the decimals that its tolerance can tell; null, for whatever fits, without an absolute tolerance.</summary>
    public static string? Of(Part part)
    {
        var isPercent = part.Unit.IsPercent;
        if (part.Tolerance.IsRelative || part.Tolerance.Amount <= 0)
            return isPercent ? Fixed(1, true) : null;
        var shown = part.Unit.Shown(part.Tolerance.Amount);
        return Fixed(Math.Clamp((int)Math.Ceiling(-Math.Log10(shown)), 0, MostDecimals), isPercent);
    }

    /// <summary>As many decimals as show five significant digits, without zeros at their end.</summary>
    public static string Readable(double number)
    {
        const int Digits = 5;
        if (number == Math.Floor(number))
            return Fixed(0, isPercent: false);
        var left = (int)Math.Floor(Math.Log10(Math.Abs(number)));
        var decimals = Math.Clamp(Digits - 1 - left, 1, 8);
        var shown = Rounded(decimals);
        while (decimals > 0 && Rounded(decimals - 1) == shown)
            decimals--;
        return Fixed(decimals, isPercent: false);

        double Rounded(int to) => Math.Round(number, to, MidpointRounding.AwayFromZero);
    }

    private static string Fixed(int decimals, bool isPercent) =>
        (decimals == 0 ? "0" : "0." + new string('0', decimals)) + (isPercent ? " %" : "");
}
