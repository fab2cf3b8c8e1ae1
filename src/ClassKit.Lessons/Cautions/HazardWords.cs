using System.Text.RegularExpressions;
using ClassKit.Lessons.Authored;
using ClassKit.Lessons.Words;

namespace ClassKit.Lessons.Cautions;

/// <summary>Reads hazards from what a method or a demonstration says and sets out, and from what a caution is called.</summary>
/// <remarks>
/// One table for all three, so that what a title is about is never known better than what a method does. It finds what is named, not what is
/// meant: a caution too many is a nuisance, one too few an injury.
/// </remarks>
public static class HazardWords
{
    /// <summary>Hazards that no word names: they follow from what is made, or from other hazards.</summary>
    public static IReadOnlyList<Hazard> OfNoWord { get; } = [Hazard.HouseRules, Hazard.Allergens, Hazard.FirstAid, Hazard.Holding];

    /// <summary>True if some word names a hazard.</summary>
    public static bool HasWords(Hazard hazard) => Table.GetValueOrDefault(hazard)?.Shown is not null;

    /// <summary>The hazards that a demonstration names, in what is said and what is set out.</summary>
    public static IEnumerable<Hazard> In(string text) => Found(text, words => words.Shown);

    /// <summary>
    /// The hazards that a method names. Flour that is not baked is told of by the formula, and not by the word.
    /// </summary>
    public static IEnumerable<Hazard> InMethod(string text) =>
        Found(text, words => words.InMethod ?? words.Shown).Where(hazard => hazard != Hazard.RawFlour);

    /// <summary>The hazards that the title of an authored caution speaks of; none where it says what is not there.</summary>
    public static IEnumerable<Hazard> InTitle(string title) =>
        Denied.IsMatch(title) ? [] : Found(title, words => words.Title ?? words.Shown);

    private static IEnumerable<Hazard> Found(string text, Func<Words, Regex?> where) =>
        Table.Where(entry => where(entry.Value)?.IsMatch(text) == true).Select(entry => entry.Key);

    private static readonly Regex Denied = Pattern(@"\b(?:no|not|never|without)\b");

    /// <param name="Shown">In a demonstration, in what is said and set out; null where no word tells.</param>
    private sealed record Words(Regex? Shown)
    {
        /// <summary>In a method, where a word of the other kind would often be something else; null for the same.</summary>
        public Regex? InMethod { get; init; }

        /// <summary>In the title of a caution; null for the same.</summary>
        public Regex? Title { get; init; }
    }

    /// <summary>A pan is a burner's where something is heated in it: a loaf pan is a tin, and a pan that milk is weighed into is cold.</summary>
    private const string HeatedPan =
        @"(?<![^.;:]*\boven\b)\b(?:heat|melt|warm|simmer|boil|cook|fry|scald|toast|sear)(?:s|ed|ing)?\b(?:(?!\b(?:loaf|cake|sheet|muffin|baking|roasting|pie|tart|tube|bundt)[ -]pan|\boven\b)[^.;:])*\bpans?\b(?![^.;:]*\boven\b)";

    /// <summary>Each word in every form that it has.</summary>
    private static readonly Dictionary<Hazard, Words> Table = new()
    {
        [Hazard.HouseRules] = new(null) { Title = Pattern(@"\bhouse rules?\b|\blocal codes?\b") },
        [Hazard.RawFlour] = new(WordForms.Of("flour", "dough", "batter", "rub in", "wet into dry"))
        {
            Title = Pattern(@"\braw\b.*\b(?:flour|dough|batter)\b|\b(?:flour|dough|batter)\b.*\braw\b"),
        },
        [Hazard.Allergens] = new(null) { Title = Pattern(@"\ballergens?\b") },
        [Hazard.OpenFlame] = new(
            WordForms.Of("burner", "hob", "stove", "cooktop", "flame", "griddle", "fryer", "pan", "saucepan", "skillet")
        )
        {
            InMethod = Pattern(
                $@"{WordForms.AnyOf("burner", "hob", "stove", "cooktop", "flame", "griddle", "fryer", "saucepan", "skillet", "frying pan")}|{HeatedPan}"
            ),
            Title = WordForms.Of("burner", "hob", "stove", "cooktop", "flame"),
        },
        // At which temperature water boils is told of a kitchen in which none does.
        [Hazard.Scald] = new(Pattern($@"{WordForms.AnyOf("kettle", "hot water", "simmer", "scald", "boil")}(?<!\bboils(?=\s+at\b))"))
        {
            Title = Pattern(@"\b(?:kettles?|scalds?|scalding|(?:hot|boiling) water)\b"),
        },
        [Hazard.HotOven] = new(WordForms.Of("oven", "hot tin", "hot tray"))
        {
            InMethod = Pattern(
                $@"\bovens?\b(?![\s-]+(?:gloves?|mitts?|cloths?|thermometers?|spring|safe|proof)\b)|{WordForms.AnyOf("hot tin", "hot tray")}"
            ),
            Title = Pattern(@"\bovens?\b|\bhot\b.*\b(?:tins?|trays?)\b"),
        },
        [Hazard.HotFat] = new(WordForms.Of("hot fat", "hot oil", "fryer", "filling a hot tin"))
        {
            InMethod = Pattern(
                $@"{WordForms.AnyOf("hot fat", "hot oil", "smoking fat", "smoking oil", "shallow fry", "pan fry")}|\bheat(?:s|ed|ing)?\s+(?:(?:the|some|a|little|film|of)\s+)*(?:oil|fat|lard|dripping)\b|\b(?:oil|fat|lard|dripping)(?:\s+\w+)?\s+(?:is|until|till)\s+(?:(?:it|is|very|just)\s+)*(?:hot|smoking|shimmering)\b"
            ),
            Title = Pattern(@"\bhot\b.*\b(?:fat|oil)\b"),
        },
        [Hazard.Frying] = new(WordForms.Of("fryer", "deep fry", "deep fat"))
        {
            Title = WordForms.Of("fry", "fryer", "deep fat", "burning fat", "fat fire"),
        },
        [Hazard.HotSugar] = new(
            Pattern(
                $@"{WordForms.AnyOf("hot sugar", "hot syrup", "hot caramel", "boiling sugar", "melted sugar", "sugar thermometer", "candy thermometer", "toffee", "praline")}|\bcaramel\b(?![\s-]+(?:colou?r|brown))|\b(?:melt|boil|cook|simmer|caramelise|caramelize)(?:s|d|ed|ing)?\s+(?:(?:the|some|sugar)\s+)*(?:sugar|syrup)\b|\bsugar\s+(?:melts|caramelises|caramelizes)\b|\bsyrup\b[^.;]{{0,40}}\b(?:boil|simmer)"
            )
        ),
        [Hazard.Steam] = new(WordForms.Of("steam", "steamer", "pierce"))
        {
            InMethod = WordForms.Of("steam", "steamer"),
            Title = WordForms.Of("steam", "steamer"),
        },
        [Hazard.PressureCooker] = new(WordForms.Of("pressure cooker", "pressure cook", "pressure canner")),
        [Hazard.HotPlate] = new(
            WordForms.Of("griddle", "hot plate", "hotplate", "hot pan", "skillet", "frying pan", "waffle iron", "tawa", "comal")
        ),
        [Hazard.Grill] = new(Pattern($@"(?<!\b(?:cooling|wire)[\s-]+){WordForms.AnyOf("grill", "broil", "broiler", "salamander")}")),
        [Hazard.Torch] = new(WordForms.Of("torch", "blowtorch")),
        [Hazard.Microwave] = new(WordForms.Of("microwave")),
        [Hazard.Lye] = new(WordForms.Of("lye", "caustic", "caustic soda", "sodium hydroxide")),
        [Hazard.DeepCold] = new(WordForms.Of("dry ice", "liquid nitrogen")),
        [Hazard.Blade] = new(
            WordForms.Of(
                "knife",
                "knives",
                "blade",
                "skewer",
                "scissors",
                "grater",
                "peeler",
                "zester",
                "razor",
                "lame",
                "scalpel",
                "pizza wheel"
            )
        ),
        [Hazard.Mandoline] = new(WordForms.Of("mandoline", "mandolin")),
        [Hazard.Mixer] = new(WordForms.Of("mixer")),
        // A pastry blender is a tool for the hand.
        [Hazard.Blender] = new(Pattern($@"(?<!\bpastry[\s-]+){WordForms.AnyOf("blender", "food processor", "liquidiser", "liquidizer")}")),
        // A batter that balloons is none.
        [Hazard.Balloon] = new(Pattern(@"\b(an?|the|each|two|latex|rubber|same) balloons?\b|(?<=^|\. )balloons?\b")),
        [Hazard.Probe] = new(WordForms.Of("probe", "thermometer")),
        [Hazard.FirstAid] = new(null) { Title = Pattern(@"\bfirst aid\b|\bburns?\b") },
        [Hazard.Holding] = new(null) { Title = Pattern(@"\bholding\b|\bheld\b|\bkept (?:hot|warm|cold)\b") },
        [Hazard.Freezing] = new(
            Pattern(
                $@"{WordForms.AnyOf("freeze", "freezer", "thaw")}(?![\s-]+bags?\b)|\bfrozen\s+(?:dough|bread|roll|bun|piece|loaf|loaves|tray|pastry)"
            )
        )
        {
            Title = Pattern(@"\b(?:freez(?:e|es|er|ers|ing)|frozen|thaw(?:s|ed|ing)?)\b"),
        },
        [Hazard.Reheating] = new(Pattern($@"{WordForms.AnyOf("reheat")}|\b(?:heat|warm)(?:s|ed|ing)?(?:\s+(?:it|them|up))*\s+again\b")),
    };

    private static Regex Pattern(string pattern) =>
        new(pattern, RegexOptions.IgnoreCase | RegexOptions.CultureInvariant | RegexOptions.Multiline);
}
