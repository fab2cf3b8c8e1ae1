namespace ClassKit.Content.FrontMatter;

/// <summary>What stands behind a key at the top of a file, in the words of the handbooks beside the content.</summary>
/// <param name="Key">The key.</param>
/// <param name="Means">What stands behind it.</param>
/// <param name="Example">A value that can stand there.</param>
internal sealed record KeyMeaning(string Key, string Means, string Example)
{
    private static readonly Lazy<Dictionary<string, KeyMeaning>> ByKey = new(() =>
        All.ToDictionary(meaning => meaning.Key, StringComparer.Ordinal)
    );

    /// <summary>Every key that a reader knows. A test holds readers, this list and the handbooks together.</summary>
    public static IReadOnlyList<KeyMeaning> All =>
        [
            new("period", "how long the lesson takes, or a class has the kitchen, in min or h", "120 min"),
            new("setup", "minutes kept before anything is weighed; 10 if left out", "10 min"),
            new("tasting", "minutes kept for tasting; two fifths of them for tasting blind, from 15 min on", "20 min"),
            new("cleanup", "minutes kept for cleaning up", "10 min"),
            new("marking", "the file that says what answers earn, as a path from this file", "../../rubrics/calculation-marks.md"),
            new(
                "bench rubric",
                "the file that says what you look for at the bench, as a path from this file",
                "../../rubrics/bench-work.md"
            ),
            new("leavening", "what raises it most: steam, yeast or chemical; none where nothing does", "yeast"),
            new("piece", "what one of them is called", "roll"),
            new("pieces", "what several are called; the one with an s if left out", "rolls"),
            new("piece mass", "what one weighs before it is baked", "60 g"),
            new("team makes", "how many pieces of it a team makes, where that is other than `pieces per team` of the class file", "2"),
            new("loss", "what stays in bowls and on hands and is weighed out besides, as a share of the dough", "3 %"),
            new(
                "mix temperature",
                "how warm the dough or batter should be when it is mixed; left out, it is taken as it comes. Water is drawn as warm as that asks for, unless a step warms something",
                "26 °C"
            ),
            new("best within", "how long it is at its best after baking", "60 min"),
            new(
                "cut after",
                "how long it rests uncut after baking, 3 h or more, where the class is over by then: it is cut and tasted another day, and sheets say so",
                "24 h"
            ),
            new("shape", "free-standing for what bakes without a tin", "free-standing"),
            new("structure", "what the gas blows up, where that is not plain: crumb, hollow shell, pocket, layers or foam", "pocket"),
            new("specific gravity", "what a cup of the batter weighs over a cup of water, as you measured it", "0.85"),
            new("starter build", "ripe starter to flour to water, how warm and how long, before the class", "1:4:4 at 24 °C for 10 h"),
            new("cup top", "the width of a cup at its top; with the next two the height is forecast", "70 mm"),
            new("cup bottom", "the width of the cup at its bottom", "51 mm"),
            new("cup depth", "the depth of the cup", "35 mm"),
            new("tin length", "the length of a loaf tin inside; with the next two the height is forecast", "120 mm"),
            new("tin width", "the width of the tin", "60 mm"),
            new("tin depth", "the depth of the tin", "45 mm"),
            new("skill", "what it practises, in words that are the same in every exercise of the kind", "scaling and yield"),
            new("level", "guided, standard or open", "standard"),
            new("minutes", "about how long it takes, a whole number", "10"),
            new(
                "source",
                "where the method is published, so that anybody can look it up",
                "Bread Bakers Guild of America, Formatting Guild Formulas, 2009"
            ),
            new("effort", "how much reckoning a variant may take, from and to; left out, any", "12 to 30"),
            new(
                "picture",
                "a PNG or JPEG of the problem, as a path from this file; it stands on sheets, pages and items, not in workbooks",
                "../loaf-tin.png"
            ),
            new(
                "picture shows",
                "what is to be seen in the picture, for whoever cannot see it",
                "A loaf tin with its length, width and depth"
            ),
            new("kitchen", "what your kitchen is called: it stands on cards and pages", "Fennel Row Teaching Kitchen"),
            new("students", "how many students come", "24"),
            new("teams", "into how many teams they go; left out where the class list has a column of teams", "6"),
            new("pieces per team", "how many pieces of each bread a team makes", "6"),
            new("starts", "when the class begins, for times of day; left out, plans count minutes", "09:00"),
            new("kitchen temperature", "how warm the kitchen is", "24 °C"),
            new("refrigerator", "how cold the refrigerator is; 4 °C if left out", "4 °C"),
            new("altitude", "how high the kitchen lies above the sea, in m or ft", "320 m"),
            new("altitude formulas", "as written, or adjusted for the altitude", "adjusted"),
            new("scale", "the step of the scales; one of 1/8 oz is read in fractions, one of 0.05 oz with decimals", "1 g"),
            new("small scale", "the step of the small scales, for salt, yeast and powder", "0.1 g"),
            new("ovens", "how many ovens there are; 0 for none", "3"),
            new("oven places", "how many trays or tins go into one oven", "6"),
            new("oven heat-up", "how long an oven takes until it is hot", "20 min"),
            new(
                "equipment",
                "what there is besides, and how many of it; of what takes several loads and heats up also that",
                "[6 burners, 6 scales, 2 steamers of 3 places hot in 10 min]"
            ),
            new("allergies", "what somebody must keep away from, in everyday words; [] for nothing", "[sesame, tree nuts]"),
            new("units", "metric, us or both", "both"),
            new("flours", "the flours that the kitchen has, where breads are to be changed to them", "[All-purpose flour, Rye flour]"),
            new("time zone", "where the class is, by the name of the IANA database", "Europe/Paris"),
            new("paper", "what you print on: A4 or letter", "A4"),
            new("prices", "your price list, as a path from this file", "prices.md"),
            new("currency", "what the prices are in", "EUR"),
            new("class", "the class profile, as a path from this file", "../class.md"),
            new("roster", "the class list, as a path from this file", "../roster.csv"),
            new("rule", "the rule that makes grades of marks, as a path from this file", "../../rubrics/term-grade.md"),
            new("marks", "the table of marks that you typed, as a path from this file", "marks.csv"),
            new("accuracy", "what a right number earns that was typed where a formula was asked", "40 %"),
            new("method", "the rest of it, for the method; with accuracy it must come to 100 %", "60 %"),
            new("follow-through", "what the right method earns on an earlier wrong answer", "100 %"),
            new("misconception", "what a known wrong method earns", "0 %"),
            new(
                "near miss",
                "what a wrong method earns that nobody listed and that is a step or two from the right one; as much as a misconception if left out",
                "20 %"
            ),
            new("unit slip", "what the right quantity in another unit earns; 0 % if left out", "0 %"),
            new("rounding slip", "what the right method earns, rounded too early or too far; 0 % if left out", "60 %"),
            new("teach again below", "a part is put forward for teaching again when fewer show the method", "60 %"),
            new("several versions", "which of several workbooks of one student counts: best or newest", "best"),
            new("late a day", "what a day late costs; nothing if left out", "10 %"),
            new("late at most", "what lateness costs at most", "50 %"),
            new("best exercises", "how many exercises count, the best ones; all if left out", "5"),
            new("points at most", "how many points count; all if left out", "40"),
            new("resit", "better or replaces; a limit may stand behind a comma", "better, at most 70 %"),
            new("absent", "what work counts that was missed without excuse: zero or left out", "zero"),
            new("late", "what is taken off marks that say late; 0 % if left out", "10 %"),
            new("second marker", "what two markers come to: mean, or the first one’s; mean if left out", "mean"),
            new("rounding", "to what grades are rounded", "1 %"),
            new("tie", "which way a half goes: up, down or even", "up"),
        ];

    /// <summary>What a key means.</summary>
    public static KeyMeaning Of(string key) => ByKey.Value[key];
}
