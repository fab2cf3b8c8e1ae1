using System.Globalization;
using ClassKit.Baking.Quantities;

namespace ClassKit.Baking.Explanations;

/// <summary>Numbers of the gas budget as its explanations print them: to three digits, since what they rest on is known to two at best, and a reader still follows the working.</summary>
internal static class ThreeFigures
{
    private const int Digits = 3;

    private const int MostDecimals = 12;

    /// <summary>A number to three digits, whole digits never taken off; halves away from zero, thousands set apart, no trailing zeros.</summary>
    public static string Show(double value)
    {
        if (double.IsNaN(value)) return "no number";
        if (value == 0) return "0";
        var decimals = Math.Clamp(Digits - 1 - (int)Math.Floor(Math.Log10(Math.Abs(value))), 0, MostDecimals);
        var rounded = Math.Round(value, decimals, MidpointRounding.AwayFromZero);
        return (rounded == 0 ? 0 : rounded).ToString("#,0." + new string('#', decimals), CultureInfo.InvariantCulture);
    }

    /// <summary>A mass in grams with its unit.</summary>
    public static string Grams(Mass mass) => $"{Show(mass.Grams)} g";

    /// <summary>A volume in millilitres with its unit.</summary>
    public static string Millilitres(Volume volume) => $"{Show(volume.Millilitres)} mL";

    /// <summary>A volume in litres with its unit.</summary>
    public static string Litres(Volume volume) => $"{Show(volume.Litres)} L";

    /// <summary>A share as a percentage.</summary>
    public static string Percent(double share) => $"{Show(PerHundred.Of(share))} %";

    /// <summary>An amount of substance in millimoles with its unit.</summary>
    public static string Millimoles(AmountOfSubstance amount) => $"{Show(amount.Millimoles)} mmol";

    /// <summary>A temperature in degrees Celsius with its unit.</summary>
    public static string Celsius(Temperature temperature) => $"{Show(temperature.Celsius)} °C";

    /// <summary>A pressure of the air in hectopascals with its unit; weather moves it by more than the digits left out.</summary>
    public static string Hectopascals(Pressure pressure) => $"{Show(pressure.Hectopascals)} hPa";

    /// <summary>A temperature in kelvin with its unit.</summary>
    public static string Kelvin(Temperature temperature) => $"{Show(temperature.Kelvin)} K";

    /// <summary>A pressure in kilopascals with its unit.</summary>
    public static string Pascals(Pressure pressure) => $"{Show(pressure.Pascals / 1000)} kPa";
}
