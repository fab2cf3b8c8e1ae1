using System.Globalization;
using System.Text.RegularExpressions;
using ClassKit.Lessons.Classes;

namespace ClassKit.Pages.Numbers;

/// <summary>Puts °F beside every °C of a text that was written in one scale only, for a class that uses °F.</summary>
/// <remarks>
/// Only for texts that tell temperatures: a difference of temperatures turns over by another rule, and is never written with °C alone in
/// them.
/// </remarks>
internal static partial class TwoScales
{
    /// <summary>The text for a class.</summary>
    public static string Of(string text, UnitSystem units) =>
        units == UnitSystem.Metric ? text : Celsius().Replace(text, match => $"{match.Value} ({Fahrenheit(match)} °F)");

    private static string Fahrenheit(Match match)
    {
        var digits = match.Groups["number"].Value.Replace('\u2212', '-');
        var fahrenheit = double.Parse(digits, CultureInfo.InvariantCulture) * 1.8 + 32;
        var decimals = digits.SkipWhile(digit => digit != '.').Skip(1).Count();
        return NumberText.AtMost(AsWritten(fahrenheit, decimals), Math.Min(1, decimals));
    }

    /// <summary>
    /// The rounder of the numbers that come to the same °C: 177 °C of a text are the 350 °F that somebody set, and 25.6 °C their 78 °F.
    /// </summary>
    private static double AsWritten(double fahrenheit, int decimals)
    {
        var step =
            decimals > 0 ? 1
            : fahrenheit > OvenFahrenheit ? DialFahrenheit
            : 0;
        if (step == 0)
            return fahrenheit;
        var round = Math.Round(fahrenheit / step, MidpointRounding.AwayFromZero) * step;
        return Math.Abs(round - fahrenheit) <= 0.5 * 1.8 * Math.Pow(10, -decimals) ? round : fahrenheit;
    }

    /// <summary>Hotter than water boils, dials are set in steps.</summary>
    private const double OvenFahrenheit = 212;

    private const double DialFahrenheit = 5;

    [GeneratedRegex(@"(?<number>[-\u2212]?[0-9]+(\.[0-9]+)?)[ \u00A0]°C(?![ \u00A0]\()")]
    private static partial Regex Celsius();
}
