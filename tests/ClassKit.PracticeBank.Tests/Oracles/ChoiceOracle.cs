namespace ClassKit.PracticeBank.Tests.Oracles;

/// <summary>
/// What is right in exercises whose parts are answered by choosing, worked out here by plain arithmetic; the causes and orders are those
/// that the exercises' sources give.
/// </summary>
internal static class ChoiceOracle
{
    public static readonly Dictionary<string, Oracle> Exercises = new()
    {
        ["popovers_that_failed"] = given =>
            Named(given, ("sank", "too_short"), ("low", "oven_cool"), ("torn", "dry_cups"), ("stopped", "door_early")),
        ["muffins_that_failed"] = given =>
            Named(given, ("tunnels", "overmixed"), ("soapy", "soda_twice"), ("flat", "stood_long"), ("spots", "not_sifted")),
        ["order_of_a_loaf"] = given =>
            Named(given, ("first", "ferment"), ("second", "divide"), ("third", "rest"), ("fourth", "mould"), ("fifth", "proof")),
        ["inside_a_choux"] = given =>
            Named(
                given,
                ("first", "air_swells"),
                ("second", "steam_blows"),
                ("third", "wall_sets"),
                ("fourth", "crust_browns"),
                ("fifth", "vents")
            ),
        ["what_is_left_over"] = given =>
        {
            // A mole of each: soda 84.007 g, lactic acid 90.078 g (IUPAC atomic weights); 1.07 is their ratio in three figures.
            var (need, held) = (given["soda"] * 90.078 / 84.007, given["milk"] * given["acidity"]);
            return
            [
                new("need", need, 0.003),
                new("held", held),
                .. Named(given, ("left", held > need ? "acid" : "soda_left"), ("taste", held > need ? "tangy" : "soapy")),
            ];
        },
        ["jar_beside_the_dough"] = given =>
        {
            var points = 100 * (given["now"] - given["start"]) / given["start"] - given.Percent("goal");
            return Named(
                given,
                (
                    "reading",
                    points < -10 ? "young"
                    : points > 10 ? "old"
                    : "ready"
                ),
                (
                    "next",
                    points < -10 ? "wait"
                    : points > 10 ? "hurry"
                    : "divide"
                )
            );
        },
        // Nothing is told of the state but by the drawing, which state a tub is in has no reason: its numbers stand for chance.
        ["tub_cut_open"] = given =>
            ((int)Math.Round(given["tub"] + given["tubs"] + given["minutes"] / 5) % 3) switch
            {
                0 => Named(given, ("stage", "under_proofed"), ("next", "wait")),
                1 => Named(given, ("stage", "just_proofed"), ("next", "bake")),
                _ => Named(given, ("stage", "over_proofed"), ("next", "knock_back")),
            },
        ["muffin_cut_open"] = given =>
            ((int)Math.Round(given["tray"] + given["trays"] + given["place"]) % 3) switch
            {
                0 => Named(given, ("cause", "well_mixed"), ("next", "as_today")),
                1 => Named(given, ("cause", "overmixed"), ("next", "stir_less")),
                _ => Named(given, ("cause", "stood_long"), ("next", "sooner")),
            },
        ["which_butter"] = given =>
        {
            (string Id, double Mass, double Price)[] offers =
            [
                ("by_case", given["case_mass"], given["case_price"]),
                ("by_block", given["block_mass"], given["block_price"]),
                ("by_pack", given["pack_mass"], given["pack_price"]),
            ];
            return Named(
                given,
                ("kilogram", offers.MinBy(offer => offer.Price / offer.Mass).Id),
                (
                    "week",
                    offers
                        .MinBy(offer => offer.Price * Enumerable.Range(1, 100).First(count => count * offer.Mass >= given["need"] - 1e-9))
                        .Id
                )
            );
        },
        ["too_warm_today"] = given =>
        {
            var rule = given["goal"] * 3 - (given["room"] + given["flour"] + given["friction"]);
            var (off, warm) = (given["water"] - rule, given["dough"] > given["goal"]);
            return
            [
                new("rule", rule),
                .. Named(
                    given,
                    ("verdict", warm ? "warm" : "cool"),
                    (
                        "cause",
                        Math.Abs(off) < 1.5 ? "friction_off"
                        : off > 0 ? "water_warm"
                        : "water_cold"
                    ),
                    ("today", warm ? "sooner" : "later")
                ),
            ];
        },
        ["where_the_dough_went"] = given =>
        {
            var scaled = given["mixed"] - given["left"];
            var baked = scaled - given["gone"];
            (string Id, double Above)[] stages =
            [
                ("at_bench", given["left"] / given["mixed"] - given["bench_share"]),
                ("at_oven", given["gone"] / scaled - given["oven_share"]),
                ("at_rack", given["dried"] / baked - given["rack_share"]),
            ];
            return [new("oven", given["gone"] / scaled), .. Named(given, ("stage", stages.MaxBy(stage => stage.Above).Id))];
        },
        ["scale_for_the_job"] = given =>
        {
            // Coarsest first: a hundred steps fit into what is weighed, and the scale carries it.
            (string Id, double Step, double Most)[] scales =
            [
                ("floor", 20, 60_000),
                ("bench", 1, 5_000),
                ("fine", 0.1, 1_000),
                ("pocket", 0.01, 200),
            ];
            return Named(
                given,
                [
                    .. new[] { "yeast", "salt", "flour" }.Select(what =>
                        ($"for_{what}", scales.First(scale => given[what] >= 100 * scale.Step - 1e-9 && given[what] <= scale.Most).Id)
                    ),
                ]
            );
        },
        ["a_card_without_a_name"] = given =>
        {
            var percent = 100 * given["water"] / given["flour"];
            var at = new[] { 58, 65.5, 75 }.Count(limit => percent > limit);
            return Named(
                given,
                ("kind", new[] { "stiff", "pan", "hearth", "flat" }[at]),
                ("bench", new[] { "firm", "smooth", "slack", "runs" }[at])
            );
        },
        ["cut_popover"] = given =>
        {
            var (blown, dry) = (
                given["hollow"] >= given["least_hollow"] * given["width"],
                given["batter"] - given["baked"] >= given["least_loss"] * given["batter"]
            );
            return Named(
                given,
                (
                    "verdict",
                    (blown, dry) switch
                    {
                        (true, true) => "passes",
                        (true, false) => "wet",
                        (false, true) => "close",
                        _ => "both",
                    }
                )
            );
        },
    };

    private static IReadOnlyList<KnownAnswer> Named(Inputs given, params IReadOnlyList<(string Part, string Option)> right) =>
        [.. right.Select(answer => new KnownAnswer(answer.Part, given.Option(answer.Part, answer.Option)))];
}
