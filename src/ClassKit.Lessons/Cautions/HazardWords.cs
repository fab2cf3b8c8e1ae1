using System.Text.RegularExpressions;

namespace ClassKit.Lessons.Cautions;

/// <summary>Reads hazards from what a method or a demonstration says and sets out.</summary>
internal static partial class HazardWords
{
    /// <summary>The hazards that words and tools name, house rules and what follows from others left out.</summary>
    public static IEnumerable<Hazard> In(string text) =>
        Patterns.Where(pattern => pattern.Value.IsMatch(text)).Select(pattern => pattern.Key);

    private static readonly Dictionary<Hazard, Regex> Patterns = new()
    {
        [Hazard.RawFlour] = RawFlour(),
        [Hazard.OpenFlame] = OpenFlame(),
        [Hazard.Scald] = Scald(),
        [Hazard.HotOven] = HotOven(),
        [Hazard.HotFat] = HotFat(),
        [Hazard.Frying] = Frying(),
        [Hazard.Steam] = Steam(),
        [Hazard.Blade] = Blade(),
        [Hazard.Mixer] = Mixer(),
        [Hazard.Balloon] = Balloon(),
        [Hazard.Probe] = Probe(),
    };

    [GeneratedRegex(@"\b(flour|dough|batter|rub(bing)? in|wet into dry)\b", RegexOptions.IgnoreCase)]
    private static partial Regex RawFlour();

    [GeneratedRegex(@"\b(burner|hob|stove|flame|griddle|fryer|(small |sauce)?pan)\b", RegexOptions.IgnoreCase)]
    private static partial Regex OpenFlame();

    [GeneratedRegex(@"\b(kettle|hot water|boiling water|boil|simmer|scald)\b", RegexOptions.IgnoreCase)]
    private static partial Regex Scald();

    [GeneratedRegex(@"\b(oven|oven gloves|hot tins?)\b", RegexOptions.IgnoreCase)]
    private static partial Regex HotOven();

    [GeneratedRegex(@"\b(hot (fat|oil)|fryer|filling a hot tin)\b", RegexOptions.IgnoreCase)]
    private static partial Regex HotFat();

    [GeneratedRegex(@"\b(fryer|deep[- ]fr(y|ied|ying))\b", RegexOptions.IgnoreCase)]
    private static partial Regex Frying();

    [GeneratedRegex(@"\b(steam|steamer|pierce)\b", RegexOptions.IgnoreCase)]
    private static partial Regex Steam();

    [GeneratedRegex(@"\b(knife|knives|blade|skewer|scissors|grater)\b", RegexOptions.IgnoreCase)]
    private static partial Regex Blade();

    [GeneratedRegex(@"\bmixer\b", RegexOptions.IgnoreCase)]
    private static partial Regex Mixer();

    // A batter that balloons is none.
    [GeneratedRegex(@"\b(an?|the|each|two|latex|rubber|same) balloons?\b|^balloons?\b", RegexOptions.IgnoreCase | RegexOptions.Multiline)]
    private static partial Regex Balloon();

    [GeneratedRegex(@"\b(probe|thermometer)\b", RegexOptions.IgnoreCase)]
    private static partial Regex Probe();
}
