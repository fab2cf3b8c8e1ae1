using System.Globalization;
using ClassKit.Baking.Quantities;

namespace ClassKit.Baking.Explanations;

/// <summary>Numbers as the explanations print them.</summary>
internal static class Figures
{
    /// <summary>However small a number is, this many of its digits are shown.</summary>
    private const int LeastDigits = 3;

    private const int MostDecimals = 12;

    /// <summary>At most <paramref name="decimals"/> decimals, or as many as three digits of a small number take; halves away from zero, thousands set apart, no trailing zeros.</summary>
    public static string Show(double value, int decimals = 2)
    {
        if (double.IsNaN(value))
            return "no number";
        if (Math.Abs(value) is > 0 and < 1)
            decimals = Math.Clamp(LeastDigits - 1 - (int)Math.Floor(Math.Log10(Math.Abs(value))), decimals, MostDecimals);
        if (Math.Abs(value) >= 1e15)
            return value.ToString("0.###e+0", CultureInfo.InvariantCulture);
        var rounded = Math.Round(value, decimals, MidpointRounding.AwayFromZero);
        return (rounded == 0 ? 0 : rounded).ToString("#,0." + new string('#', decimals), CultureInfo.InvariantCulture);
    }

    /// <summary>A mass in grams with its unit.</summary>
    public static string Grams(Mass mass, int decimals = 2) => $"{Show(mass.Grams, decimals)} g";

    /// <summary>A volume in millilitres with its unit.</summary>
    public static string Millilitres(Volume volume, int decimals = 2) => $"{Show(volume.Millilitres, decimals)} mL";

    /// <summary>A volume in litres with its unit.</summary>
    public static string Litres(Volume volume, int decimals = 1) => $"{Show(volume.Litres, decimals)} L";

    /// <summary>A share as a percentage.</summary>
    public static string Percent(double share, int decimals = 2) => $"{Show(PerHundred.Of(share), decimals)} %";

    /// <summary>An amount of substance in millimoles with its unit.</summary>
    public static string Millimoles(AmountOfSubstance amount) => $"{Show(amount.Millimoles, 3)} mmol";

    /// <summary>A temperature in degrees Celsius with its unit.</summary>
    public static string Celsius(Temperature temperature) => $"{Show(temperature.Celsius)} °C";

    /// <summary>A temperature in kelvin with its unit.</summary>
    public static string Kelvin(Temperature temperature) => $"{Show(temperature.Kelvin)} K";

    /// <summary>A pressure in kilopascals with its unit, to 10 Pa: the air of a day differs from the standard's by a hundred times that.</summary>
    public static string Pascals(Pressure pressure) => pressure.Pascals < 1000
        ? $"{Show(pressure.Pascals / 1000)} kPa"
        : $"{Math.Round(pressure.Pascals / 1000, 2, MidpointRounding.AwayFromZero).ToString("#,0.00", CultureInfo.InvariantCulture)} kPa";

    /// <summary>An amount of money, in whatever it is, to a hundredth of a cent.</summary>
    public static string Amount(Money money) => Show((double)money.Amount, 4);
}
