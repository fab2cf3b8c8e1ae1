using System.Globalization;

namespace ClassKit.Baking;

/// <summary>Numbers as the explanations print them.</summary>
internal static class Figures
{
    /// <summary>At most <paramref name="decimals"/> decimals, halves away from zero, thousands set apart, no trailing zeros.</summary>
    public static string Show(double value, int decimals = 2)
    {
        var rounded = Math.Round(value, decimals, MidpointRounding.AwayFromZero);
        return (rounded == 0 ? 0 : rounded).ToString("#,0." + new string('#', decimals), CultureInfo.InvariantCulture);
    }

    /// <summary>A mass in grams with its unit.</summary>
    public static string Grams(Mass mass, int decimals = 2) => $"{Show(mass.Grams, decimals)} g";

    /// <summary>A volume in millilitres with its unit.</summary>
    public static string Millilitres(Volume volume, int decimals = 2) => $"{Show(volume.Millilitres, decimals)} mL";

    /// <summary>A share as a percentage.</summary>
    public static string Percent(double share, int decimals = 2) => $"{Show(share * 100, decimals)} %";
}
