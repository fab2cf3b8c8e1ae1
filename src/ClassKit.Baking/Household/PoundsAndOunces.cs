using System.Globalization;
using System.Text.RegularExpressions;
using ClassKit.Baking.Quantities;

namespace ClassKit.Baking.Household;

/// <summary>Masses in pounds and quarter ounces, as scales in US kitchens show them.</summary>
/// <remarks>Armed Forces Recipe Service, General Information A-1: ounces go to the nearest quarter, 4.35 lb are 4 lb 5 1/2 oz.</remarks>
public static partial class PoundsAndOunces
{
    private const int OuncesPerPound = 16;

    /// <summary>A mass as <c>4 lb 5 1/2 oz</c>, to the nearest quarter ounce, halves away from zero.</summary>
    /// <param name="mass">Not negative.</param>
    public static string Show(Mass mass) => Show(mass, OunceReading.Quarters);

    /// <summary>The same as a scale shows ounces: <c>4 lb 5.35 oz</c> on one with decimals.</summary>
    /// <param name="mass">Not negative.</param>
    /// <param name="reading">How the scale shows them.</param>
    public static string Show(Mass mass, OunceReading reading)
    {
        ArgumentNullException.ThrowIfNull(reading);
        ArgumentOutOfRangeException.ThrowIfNegative(mass.Grams);
        var rounded = reading.Rounded(mass.Ounces);
        var pounds = (long)(rounded / OuncesPerPound);
        var ounces = reading.Show(rounded - pounds * OuncesPerPound, everyDecimal: false);
        return (pounds, ounces) switch
        {
            (0, _) => $"{ounces} oz",
            (_, "0") => string.Create(CultureInfo.InvariantCulture, $"{pounds} lb"),
            _ => string.Create(CultureInfo.InvariantCulture, $"{pounds} lb {ounces} oz"),
        };
    }

    /// <summary>
    /// Reads <c>4 lb 5 1/2 oz</c>, <c>2 lb</c>, <c>5.5 oz</c>, <c>1 1/2 lb</c>; <c>#</c> and <c>lbs</c> stand for pounds too.
    /// </summary>
    /// <param name="text">As typed.</param>
    /// <param name="mass">What was read; 0 g if nothing was.</param>
    public static bool TryParse(string text, out Mass mass)
    {
        ArgumentNullException.ThrowIfNull(text);
        mass = default;
        var match = Shape().Match(text);
        if (!match.Success)
            return false;
        var (pounds, ounces) = (0.0, 0.0);
        if (match.Groups["lb"].Success && !KitchenFraction.TryParse(match.Groups["lb"].Value, out pounds))
            return false;
        if (match.Groups["oz"].Success && !KitchenFraction.TryParse(match.Groups["oz"].Value, out ounces))
            return false;
        mass = Mass.FromPounds(pounds) + Mass.FromOunces(ounces);
        return match.Groups["lb"].Success || match.Groups["oz"].Success;
    }

    [GeneratedRegex(
        @"^\s*(?:(?<lb>[0-9][0-9 ./¼½¾⅓⅔⅛⅜⅝⅞⁄-]*?)\s*(?:lbs?\.?|pounds?|#)\s*)?(?:(?<oz>[0-9¼½¾⅓⅔⅛⅜⅝⅞][0-9 ./¼½¾⅓⅔⅛⅜⅝⅞⁄-]*?)\s*(?:oz\.?|ounces?)\s*)?$",
        RegexOptions.IgnoreCase | RegexOptions.CultureInvariant
    )]
    private static partial Regex Shape();
}
