using System.Globalization;
using System.Text.RegularExpressions;
using ClassKit.Content.Diagnostics;
using ClassKit.Content.Sources;
using ClassKit.Lessons.Classes;

namespace ClassKit.Content.Classes;

/// <summary>
/// Reads when a class begins, as the clock on its wall says it: <c>09:00</c>, <c>14:30</c>, <c>9:00 am</c>, <c>2.30 pm</c>.
/// </summary>
internal static partial class StartOfClass
{
    public static ClassStart? Read(Located text, ProblemList problems)
    {
        var match = Clock().Match(text.Text);
        var half = match.Groups["half"].Value;
        if (
            match.Success
            && int.Parse(match.Groups["hour"].Value, CultureInfo.InvariantCulture) is var hour
            && int.Parse(match.Groups["minute"].Value, CultureInfo.InvariantCulture) is < 60 and var minute
            && (half.Length == 0 ? hour is < 24 : hour is >= 1 and <= 12)
        )
        {
            return half.Length == 0 ? new(new(hour, minute), false) : new(new(hour % 12 + (half is "p" or "P" ? 12 : 0), minute), true);
        }
        problems.Add(
            text.Line,
            $"`starts` is `{text.Text}`, which is no time of the day",
            "Write hours and minutes: `starts: 09:00`, `starts: 14:30` or `starts: 2:30 pm`."
        );
        return null;
    }

    [GeneratedRegex(
        @"^(?<hour>\d{1,2})[:.](?<minute>\d{2})(?:\s*(?<half>[ap])\.?m\.?)?$",
        RegexOptions.IgnoreCase | RegexOptions.CultureInvariant
    )]
    private static partial Regex Clock();
}
