using System.Globalization;
using ClassKit.Exercises.Authoring;

namespace ClassKit.Pages.Charts;

/// <summary>Numbers in SVG attributes: a point for the decimals whatever the culture, and no more digits than can be seen.</summary>
internal static class SvgNumber
{
    /// <summary>A length or coordinate.</summary>
    public static string Of(double value) => value.ToString("0.##", CultureInfo.InvariantCulture);

    /// <summary>A share from 0 to 1 as a percentage of the drawing.</summary>
    public static string Percent(double share) => Unit.Percent.Shown(share).ToString("0.###", CultureInfo.InvariantCulture) + "%";
}
