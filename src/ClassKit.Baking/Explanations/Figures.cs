using System.Globalization;
using ClassKit.Baking.Quantities;

namespace ClassKit.Baking.Explanations;

/// <summary>
/// Numbers as the explanations print them: what was worked out to three digits, since what it rests on is known to two or three, and a
/// reader still follows the working.
/// </summary>
public static class Figures
{
    private const int Digits = 3;

    private const int MostDecimals = 12;

    /// <summary>From here on a number is printed by its power of ten.</summary>
    private const double TooLong = 1e15;

    /// <summary>
    /// A number to three digits, whole digits never taken off; halves away from zero, thousands set apart, no trailing zeros.
    /// </summary>
    public static string Show(double value) => Rounded(value, Math.Clamp(DecimalsOfThreeDigits(value), 0, MostDecimals));

    /// <summary>
    /// A number that was typed or published: at most <paramref name="decimals"/> decimals, or as many as three digits of a small number
    /// take.
    /// </summary>
    public static string Exact(double value, int decimals = 2) =>
        Rounded(value, Math.Abs(value) < 1 ? Math.Clamp(DecimalsOfThreeDigits(value), decimals, MostDecimals) : decimals);

    /// <summary>A mass in grams with its unit.</summary>
    public static string Grams(Mass mass) => $"{Show(mass.Grams)} g";

    /// <summary>A volume in millilitres with its unit.</summary>
    public static string Millilitres(Volume volume) => $"{Show(volume.Millilitres)} mL";

    /// <summary>A volume in litres with its unit.</summary>
    public static string Litres(Volume volume) => $"{Show(volume.Litres)} L";

    /// <summary>
    /// A percentage with its sign: to three digits, and to a tenth from 100 % on, so that what is added up still adds up; 65 is 65 %.
    /// </summary>
    public static string PerHundredOf(double percent) =>
        $"{Rounded(percent, Math.Clamp(DecimalsOfThreeDigits(percent), 1, MostDecimals))} %";

    /// <summary>A share as a percentage.</summary>
    public static string Percent(double share) => PerHundredOf(PerHundred.Of(share));

    /// <summary>An amount of substance in millimoles with its unit.</summary>
    public static string Millimoles(AmountOfSubstance amount) => $"{Show(amount.Millimoles)} mmol";

    /// <summary>A temperature in degrees Celsius with its unit.</summary>
    public static string Celsius(Temperature temperature) => $"{Show(temperature.Celsius)} °C";

    /// <summary>A temperature in kelvin with its unit.</summary>
    public static string Kelvin(Temperature temperature) => $"{Show(temperature.Kelvin)} K";

    /// <summary>A pressure of the air in hectopascals with its unit; weather moves it by more than the digits left out.</summary>
    public static string Hectopascals(Pressure pressure) => $"{Show(pressure.Hectopascals)} hPa";

    /// <summary>
    /// A pressure in kilopascals with its unit: to three digits, and to a tenth from 100 kPa on, so that a difference of two is what they
    /// show.
    /// </summary>
    public static string Pascals(Pressure pressure)
    {
        var kilopascals = pressure.Pascals / 1000;
        return $"{Rounded(kilopascals, Math.Clamp(DecimalsOfThreeDigits(kilopascals), 1, MostDecimals))} kPa";
    }

    /// <summary>An amount of money, in whatever it is: to the cent, and below one to three digits.</summary>
    public static string Amount(Money money) => Exact((double)money.Amount);

    private static int DecimalsOfThreeDigits(double value) => value == 0 ? 0 : Digits - 1 - (int)Math.Floor(Math.Log10(Math.Abs(value)));

    private static string Rounded(double value, int decimals)
    {
        if (double.IsNaN(value))
            return "no number";
        if (Math.Abs(value) >= TooLong)
            return value.ToString("0.###e+0", CultureInfo.InvariantCulture);
        var rounded = Math.Round(value, decimals, MidpointRounding.AwayFromZero);
        return (rounded == 0 ? 0 : rounded).ToString("#,0." + new string('#', decimals), CultureInfo.InvariantCulture);
    }
}
