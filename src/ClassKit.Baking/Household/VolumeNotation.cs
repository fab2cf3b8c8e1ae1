using System.Text.RegularExpressions;
using ClassKit.Baking.Quantities;

namespace ClassKit.Baking.Household;

/// <summary>Volumes as kitchens write them: <c>1 3/4 cups</c>, <c>2 1/4 tsp</c>, <c>500 mL</c>.</summary>
public static partial class VolumeNotation
{
    /// <summary>
    /// A volume in the largest household measure that it fills at least a quarter of, to the nearest quarter or third of a cup, half
    /// tablespoon or eighth teaspoon.
    /// </summary>
    /// <param name="volume">Not negative.</param>
    /// <param name="measures">What a cup is; US customary if not given.</param>
    public static string Show(Volume volume, MeasureDefinition? measures = null)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(volume.Litres);
        measures ??= MeasureDefinition.UnitedStates;
        var cups = volume / measures.Cup;
        if (cups >= 0.25 - 1e-9)
        {
            var (text, value) = KitchenFraction.Nearest(cups, eighths: false);
            return $"{text} {(value > 1 ? "cups" : "cup")}";
        }
        var tablespoons = volume / measures.Tablespoon;
        return tablespoons >= 1 - 1e-9
            ? $"{KitchenFraction.Show(tablespoons, 2)} tbsp"
            : $"{KitchenFraction.Show(volume / measures.Teaspoon, 8)} tsp";
    }

    /// <summary>
    /// Reads a kitchen number and a unit: cup(s), c, tbsp, tablespoon(s), tsp, teaspoon(s), fl oz, pint, quart, gallon, mL, cL, dL, L.
    /// </summary>
    /// <param name="text">As typed; upper or lower case.</param>
    /// <param name="volume">What was read; 0 L if nothing was.</param>
    /// <param name="measures">What a cup is; US customary if not given.</param>
    public static bool TryParse(string text, out Volume volume, MeasureDefinition? measures = null)
    {
        ArgumentNullException.ThrowIfNull(text);
        volume = default;
        measures ??= MeasureDefinition.UnitedStates;
        var match = Shape().Match(text);
        if (!match.Success || !KitchenFraction.TryParse(match.Groups["number"].Value, out var number))
            return false;
        Volume? unit = UnitOf(match.Groups["unit"].Value) switch
        {
            "cup" or "cups" or "c" => measures.Cup,
            "tbsp" or "tablespoon" or "tablespoons" or "tbs" => measures.Tablespoon,
            "tsp" or "teaspoon" or "teaspoons" => measures.Teaspoon,
            "floz" or "fluidounce" or "fluidounces" => measures.FluidOunce,
            "pt" or "pint" or "pints" => measures.Pint,
            "qt" or "quart" or "quarts" => measures.Cup * 4,
            "gal" or "gallon" or "gallons" => measures.Cup * 16,
            "ml" or "millilitre" or "millilitres" or "milliliter" or "milliliters" => Volume.FromLitres(0.001),
            "cl" => Volume.FromLitres(0.01),
            "dl" => Volume.FromLitres(0.1),
            "l" or "litre" or "litres" or "liter" or "liters" => Volume.FromLitres(1),
            _ => null,
        };
        if (unit is not { } one)
            return false;
        volume = one * number;
        return true;
    }

    private static string UnitOf(string text) =>
        text.Replace(" ", "", StringComparison.Ordinal).Replace(".", "", StringComparison.Ordinal).ToLowerInvariant();

    [GeneratedRegex(
        @"^\s*(?<number>[0-9¼½¾⅓⅔⅛⅜⅝⅞][0-9 ./¼½¾⅓⅔⅛⅜⅝⅞⁄-]*?)\s*(?<unit>[A-Za-z][A-Za-z. ]*?)\s*$",
        RegexOptions.CultureInvariant
    )]
    private static partial Regex Shape();
}
