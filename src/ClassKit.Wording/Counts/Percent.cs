using System.Globalization;
using ClassKit.Exercises.Authoring;

namespace ClassKit.Wording.Counts;

/// <summary>Shares as sentences say them. The one place that does.</summary>
public static class Percent
{
    /// <summary>A share in percent, to a tenth where it needs one: <c>5 %</c> for 0.05, <c>12.5 %</c> for 0.125.</summary>
    public static string Of(decimal share) => string.Create(CultureInfo.InvariantCulture, $"{Unit.Percent.Shown(share):0.#} %");
}
