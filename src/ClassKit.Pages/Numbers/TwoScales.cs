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
        return NumberText.AtMost(fahrenheit, digits.Contains('.', StringComparison.Ordinal) ? 1 : 0);
    }

    [GeneratedRegex(@"(?<number>[-\u2212]?[0-9]+(\.[0-9]+)?)[ \u00A0]°C(?![ \u00A0]\()")]
    private static partial Regex Celsius();
}
