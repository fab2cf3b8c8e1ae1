using System.Text.RegularExpressions;
using ClassKit.Lessons.Authored;
using ClassKit.Lessons.Words;

namespace ClassKit.Lessons.Cautions;

/// <summary>
/// Which standing cautions an authored one takes the place of. It fails on the safe side: a caution speaks of a hazard only where its
/// <em>title</em> names that hazard in whole words, and its text says the rule or the figure that the standing one is there for. All
/// others leave the standing one where it is.
/// </summary>
public static class ReplacedHazards
{
    /// <summary>The hazards whose standing caution an authored one replaces; none of most.</summary>
    public static IReadOnlyList<Hazard> Of(Caution caution) => NamedIn(caution, saysRule: true);

    /// <summary>The hazards that a title names and whose rule its text does not say: there the standing one is printed besides.</summary>
    public static IReadOnlyList<Hazard> OnlyNamed(Caution caution) => NamedIn(caution, saysRule: false);

    private static IReadOnlyList<Hazard> NamedIn(Caution caution, bool saysRule)
    {
        ArgumentNullException.ThrowIfNull(caution);
        return Denied.IsMatch(caution.Title)
            ? []
            :
            [
                .. Named
                    .Where(named => named.Value.Title.IsMatch(caution.Title) && Says(named.Value, caution) == saysRule)
                    .Select(named => named.Key),
            ];
    }

    private static bool Says((Regex Title, Regex[] Rule) named, Caution caution) =>
        named.Rule.All(rule => rule.IsMatch($"{caution.Title}. {caution.Text.OwnWords}"));

    /// <summary>A title that says what is not there speaks of no hazard.</summary>
    private static readonly Regex Denied = Pattern(@"\b(?:no|not|never|without)\b");

    /// <summary>A figure that is whole: neither the end of another nor of a range.</summary>
    private const string Whole = @"(?<![\d.,–-])";

    private const string ColdDegrees = $@"{Whole}(?:[45]\s*°\s*C|4[01]\s*°\s*F)\b";
    private const string HotDegrees = $@"{Whole}(?:(?:57|60|63)\s*°\s*C|1(?:35|40|45)\s*°\s*F)\b";

    /// <summary>What must be declared stands in no line: it follows from the formula, and no author replaces it.</summary>
    private static readonly Dictionary<Hazard, (Regex Title, Regex[] Rule)> Named = new()
    {
        [Hazard.HouseRules] = (Pattern(@"\bhouse rules?\b|\blocal codes?\b"), [Pattern(@"\blocal codes?\b")]),
        [Hazard.RawFlour] = (
            Pattern(@"\braw\b.*\bflour\b|\bflour\b.*\braw\b"),
            [Pattern(@"\b(?:tast(?:e|es|ed|ing)|eats?|eating|eaten)\b")]
        ),
        [Hazard.OpenFlame] = (
            WordForms.Of("burner", "open flame", "flame"),
            [WordForms.Of("handle", "sleeve", "cloth", "leave", "left", "turn", "reach", "watch")]
        ),
        [Hazard.Scald] = (Pattern(@"\b(?:scalds?|scalding|(?:hot|boiling) water)\b"), [Pattern(Harm)]),
        [Hazard.HotOven] = (
            Pattern(@"\bovens?\b|\bhot\b.*\b(?:tins?|trays?)\b"),
            [Pattern(@"\bhot\b"), WordForms.Of("glove", "cloth", "carry")]
        ),
        [Hazard.HotFat] = (Pattern(@"\bhot\b.*\b(?:fat|oil)\b"), [WordForms.Of("wet", "water", "dry", "splash", "spit")]),
        [Hazard.Frying] = (
            WordForms.Of("fry", "fryer", "deep fat", "burning fat", "fat fire", "hot fat", "hot oil"),
            [WordForms.Of("lid", "blanket", "extinguisher"), Pattern(@"\b(?:never|no|not)\b[^.;]*\bwater\b")]
        ),
        [Hazard.Steam] = (Pattern(@"\b(?:steam|steamers?)\b"), [Pattern(Harm)]),
        [Hazard.HotPlate] = (
            Pattern(@"\b(?:griddles?|hot ?plates?|hot pans?)\b"),
            [Pattern(@"\bhot\b"), WordForms.Of("tongs", "spatula", "glove", "cloth", "touch", "mark")]
        ),
        [Hazard.Microwave] = (Pattern(@"\bmicrowaves?\b"), [WordForms.Of("stand", "stir", "uneven", "unevenly", "probe", "face")]),
        [Hazard.Blade] = (
            Pattern(@"\b(?:knife|knives|blades?|lames?|skewers?|scissors)\b"),
            [WordForms.Of("point", "sink", "carry", "finger", "sharp", "away", "sheath", "tip")]
        ),
        [Hazard.Mixer] = (Pattern(@"\bmixers?\b"), [WordForms.Of("hand", "hair", "finger", "sleeve")]),
        [Hazard.Balloon] = (Pattern(@"\bballoons?\b"), [Pattern(@"\blatex\b")]),
        [Hazard.Probe] = (Pattern(@"\b(?:probes?|thermometers?)\b"), [WordForms.Of("clean", "wash", "wipe", "sanitise", "sanitize")]),
        [Hazard.FirstAid] = (Pattern(@"\bfirst aid\b|\bburns?\b"), [Pattern(@"\brunning water\b"), Pattern(@"\b20 min(?:utes?)?\b")]),
        [Hazard.Holding] = (
            Pattern(@"\bhold(?:s|ing)?\b|\bheld\b|\bkept (?:hot|warm|cold)\b"),
            [
                Pattern(
                    $@"{Whole}4 (?:hours|h)\b.*\b(?:thrown? away|discard(?:ed)?|temperature control)\b|^(?=.*{ColdDegrees}).*{HotDegrees}"
                ),
            ]
        ),
        [Hazard.Freezing] = (Pattern(@"\b(?:freez(?:e|es|ing)|frozen|thaw(?:s|ed|ing)?)\b"), [WordForms.Of("thaw"), Pattern(ColdDegrees)]),
        [Hazard.Reheating] = (Pattern(@"\breheat(?:s|ed|ing)?\b|\bheated again\b"), [Pattern(@"\b7[45]\s*°\s*C\b|\b16[57]\s*°\s*F\b")]),
    };

    /// <summary>Words of someone to whom heat could be done, or of keeping it from them.</summary>
    private const string Harm =
        @"\b(?:faces?|hands?|fingers?|skin|gloves?|lids?|burns?|scalds?|pour(?:s|ed|ing)?|away|reach(?:es|ed|ing)?)\b";

    private static Regex Pattern(string pattern) =>
        new(pattern, RegexOptions.IgnoreCase | RegexOptions.CultureInvariant | RegexOptions.Singleline);
}
