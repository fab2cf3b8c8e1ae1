using System.Globalization;
using System.Text.RegularExpressions;

namespace ClassKit.Baking.Household;

/// <summary>Times as kitchens write them: <c>45 min</c>, <c>1 h 15 min</c>, <c>1:15</c>.</summary>
public static partial class TimeNotation
{
    /// <summary>Nothing in a bakery takes longer: two weeks.</summary>
    private const double MostMinutes = 14 * 24 * 60;

    /// <summary>A time as <c>1 h 15 min</c>, to the minute, halves up.</summary>
    /// <param name="time">Not negative.</param>
    public static string Show(TimeSpan time)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(time, TimeSpan.Zero);
        var minutes = (long)Math.Round(time.TotalMinutes, MidpointRounding.AwayFromZero);
        return (minutes / 60, minutes % 60) switch
        {
            (0, var rest) => string.Create(CultureInfo.InvariantCulture, $"{rest} min"),
            (var hours, 0) => string.Create(CultureInfo.InvariantCulture, $"{hours} h"),
            var (hours, rest) => string.Create(CultureInfo.InvariantCulture, $"{hours} h {rest} min"),
        };
    }

    /// <summary>
    /// Reads hours, minutes or both, in words or with a colon; kitchen fractions too: <c>1 1/2 h</c>. A bare number is not read.
    /// </summary>
    /// <param name="text">As typed; upper or lower case.</param>
    /// <param name="time">What was read, at most two weeks; 0 if nothing was.</param>
    public static bool TryParse(string text, out TimeSpan time)
    {
        ArgumentNullException.ThrowIfNull(text);
        time = default;
        var match = Shape().Match(text);
        if (!match.Success || !(match.Groups["h"].Success || match.Groups["min"].Success || match.Groups["clock"].Success))
            return false;
        var (hours, minutes) = (0.0, 0.0);
        if (match.Groups["h"].Success && !KitchenFraction.TryParse(match.Groups["h"].Value, out hours))
            return false;
        if (match.Groups["min"].Success && !KitchenFraction.TryParse(match.Groups["min"].Value, out minutes))
            return false;
        if (match.Groups["clock"].Success)
            (hours, minutes) = (
                int.Parse(match.Groups["clock"].Value, CultureInfo.InvariantCulture),
                int.Parse(match.Groups["rest"].Value, CultureInfo.InvariantCulture)
            );
        if (hours * 60 + minutes > MostMinutes)
            return false;
        time = TimeSpan.FromMinutes(hours * 60 + minutes);
        return true;
    }

    [GeneratedRegex(
        @"^\s*(?:(?<clock>[0-9]{1,3}):(?<rest>[0-5][0-9])|(?:(?<h>[0-9½¼¾][0-9 ./½¼¾⅓⅔⁄]*?)\s*(?:hours?|hrs?\.?|h)\s*)?(?:(?<min>[0-9½¼¾][0-9 ./½¼¾⅓⅔⁄]*?)\s*(?:minutes?|mins?\.?))?)\s*$",
        RegexOptions.IgnoreCase | RegexOptions.CultureInvariant
    )]
    private static partial Regex Shape();
}
