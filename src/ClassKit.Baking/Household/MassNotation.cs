using System.Globalization;
using System.Text.RegularExpressions;
using ClassKit.Baking.Explanations;
using ClassKit.Baking.Quantities;

namespace ClassKit.Baking.Household;

/// <summary>Masses as people write them: <c>390 g</c>, <c>1.34 kg</c>, <c>4 lb 5 1/2 oz</c>.</summary>
public static partial class MassNotation
{
    /// <summary>Reads a metric mass (mg, g, kg) or pounds and ounces.</summary>
    /// <param name="text">As typed.</param>
    /// <param name="mass">What was read; 0 g if nothing was.</param>
    public static bool TryParse(string text, out Mass mass)
    {
        ArgumentNullException.ThrowIfNull(text);
        var match = Metric().Match(text);
        if (!match.Success)
            return PoundsAndOunces.TryParse(text, out mass);
        mass = default;
        if (!KitchenFraction.TryParse(match.Groups["number"].Value, out var number))
            return false;
        mass = match.Groups["unit"].Value.ToLowerInvariant() switch
        {
            "mg" => Mass.FromGrams(number / 1000),
            "kg" => Mass.FromKilograms(number),
            _ => Mass.FromGrams(number),
        };
        return true;
    }

    /// <summary>A mass as kitchens write it: <c>390 g</c>, <c>1.34 kg</c>; to the gram from 100 g up, to three digits below.</summary>
    /// <param name="mass">Not negative.</param>
    public static string Show(Mass mass)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(mass.Grams);
        return Math.Round(mass.Grams, MidpointRounding.AwayFromZero) < 1000
            ? Figures.Grams(mass)
            : string.Create(CultureInfo.InvariantCulture, $"{Math.Round(mass.Kilograms, 3, MidpointRounding.AwayFromZero):0.###} kg");
    }

    [GeneratedRegex(
        @"^\s*(?<number>[0-9][0-9 ./]*?)\s*(?<unit>mg|kg|g|gram|grams)\s*$",
        RegexOptions.IgnoreCase | RegexOptions.CultureInvariant
    )]
    private static partial Regex Metric();
}
