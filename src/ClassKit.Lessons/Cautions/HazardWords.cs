using System.Text.RegularExpressions;
using ClassKit.Lessons.Authored;
using ClassKit.Lessons.Words;

namespace ClassKit.Lessons.Cautions;

/// <summary>Reads hazards from what a method or a demonstration says and sets out.</summary>
internal static class HazardWords
{
    /// <summary>The hazards that words and tools name, house rules and what follows from others left out.</summary>
    public static IEnumerable<Hazard> In(string text) =>
        Patterns.Where(pattern => pattern.Value.IsMatch(text)).Select(pattern => pattern.Key);

    /// <summary>Each word in every form that it has.</summary>
    private static readonly Dictionary<Hazard, Regex> Patterns = new()
    {
        [Hazard.RawFlour] = WordForms.Of("flour", "dough", "batter", "rub in", "wet into dry"),
        [Hazard.OpenFlame] = WordForms.Of("burner", "hob", "stove", "flame", "griddle", "fryer", "pan", "saucepan"),
        // At which temperature water boils is told of a kitchen in which none does.
        [Hazard.Scald] = Pattern($@"{WordForms.AnyOf("kettle", "hot water", "simmer", "scald", "boil")}(?<!\bboils(?=\s+at\b))"),
        [Hazard.HotOven] = WordForms.Of("oven", "hot tin"),
        [Hazard.HotFat] = WordForms.Of("hot fat", "hot oil", "fryer", "filling a hot tin"),
        [Hazard.Frying] = WordForms.Of("fryer", "deep fry"),
        [Hazard.Steam] = WordForms.Of("steam", "steamer", "pierce"),
        [Hazard.Blade] = WordForms.Of("knife", "knives", "blade", "skewer", "scissors", "grater"),
        [Hazard.Mixer] = WordForms.Of("mixer"),
        // A batter that balloons is none.
        [Hazard.Balloon] = Pattern(@"\b(an?|the|each|two|latex|rubber|same) balloons?\b|(?<=^|\. )balloons?\b"),
        [Hazard.Probe] = WordForms.Of("probe", "thermometer"),
    };

    private static Regex Pattern(string pattern) =>
        new(pattern, RegexOptions.IgnoreCase | RegexOptions.CultureInvariant | RegexOptions.Multiline);
}
