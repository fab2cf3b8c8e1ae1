using ClassKit.Baking.Cooking;
using ClassKit.Baking.FoodSafety;
using ClassKit.Baking.Formulas;
using ClassKit.Baking.Ingredients;
using ClassKit.Baking.Quantities;
using ClassKit.BenchPlans.Classes;
using ClassKit.Lessons.Allergies;
using ClassKit.Lessons.Authored;
using ClassKit.Lessons.Mixing;
using ClassKit.Lessons.NamedFoods;
using ClassKit.Lessons.Series;

namespace ClassKit.Lessons.Cautions;

/// <summary>The cautions that belong to a method whether its author thought of them or not.</summary>
public static class StandingCautions
{
    /// <summary>The sentence that stands on every page of a pack.</summary>
    public const string HouseRules = "Local codes and the instructor’s own safety rules come before anything printed here.";

    private const string KeptApart = "Label the trays, and keep the tools of each bread apart.";

    private const string KeptFromBreads = "Keep its tools apart from those of the breads.";

    private static readonly Temperature Hot = HoldingRule.FoodCode.Hot;
    private static readonly Temperature Cold = HoldingRule.FoodCode.Cold;

    /// <summary>What can burn: wherever one of these is, first aid is told.</summary>
    private static readonly Hazard[] Burning =
    [
        Hazard.OpenFlame,
        Hazard.Scald,
        Hazard.HotOven,
        Hazard.HotFat,
        Hazard.Frying,
        Hazard.Steam,
        Hazard.HotPlate,
        Hazard.Microwave,
        Hazard.HotSugar,
        Hazard.PressureCooker,
        Hazard.Grill,
        Hazard.Torch,
    ];

    /// <summary>What its heat brings to whatever is cooked beside a bread.</summary>
    private static readonly Hazard[] OfTheHeat = [Hazard.HotOven, Hazard.Frying, Hazard.Steam, Hazard.HotPlate, Hazard.Microwave];

    /// <summary>The hazards of a formula.</summary>
    public static IReadOnlyList<Hazard> In(LessonFormula formula)
    {
        ArgumentNullException.ThrowIfNull(formula);
        var steps = formula.Steps;
        HashSet<Hazard> found =
        [
            Hazard.HouseRules,
            Hazard.Holding,
            Hazard.Allergens,
            .. When(formula.Ingredients.Any(ingredient => ingredient.Role == IngredientRole.Flour), Hazard.RawFlour),
            .. When(steps.Any(step => Uses(step, "burner", "griddle", "fryer")), Hazard.OpenFlame),
            .. When(
                Cooks(steps, CookingWay.BoilingWater) || steps.Any(step => step.Work.Heats.Any(heat => heat.Kind == HeatKind.Boiled)),
                Hazard.Scald
            ),
            .. When(Cooks(steps, CookingWay.Oven, CookingWay.PizzaOven, CookingWay.CombiOven), Hazard.HotOven),
            .. When(steps.Any(step => step.Work.OvenReady), Hazard.HotFat),
            .. When(steps.Any(step => Uses(step, "fryer")) || Cooks(steps, CookingWay.Fryer), Hazard.Frying),
            .. When(Cooks(steps, CookingWay.Griddle, CookingWay.Pan), Hazard.HotPlate),
            .. When(Cooks(steps, CookingWay.Microwave), Hazard.Microwave),
            .. When(
                formula.Formula.Leavening == Leavening.Steam
                    || Cooks(steps, CookingWay.Steamer, CookingWay.CombiOven)
                    || steps.Any(step => Uses(step, "steamer")),
                Hazard.Steam
            ),
            .. When(steps.Any(step => step.IsFreezing), Hazard.Freezing),
            .. When(steps.Any(step => step.Work.Reheats), Hazard.Reheating),
            .. When(steps.Any(step => Uses(step, "mixer")), Hazard.Mixer),
            .. HazardWords.InMethod(Named(formula)),
        ];
        return WithFirstAid(found);
    }

    /// <summary>
    /// The hazards of a demonstration, from what is said and what is set out: its own, and none of the bread that it belongs to.
    /// </summary>
    public static IReadOnlyList<Hazard> In(LessonDemonstration shown)
    {
        ArgumentNullException.ThrowIfNull(shown);
        return WithFirstAid([
            Hazard.HouseRules,
            .. When(Weighed(shown).Any(), Hazard.Allergens),
            .. HazardWords.In(
                $"{shown.Name}. {shown.Text.OwnWords}. {string.Join(". ", shown.Tools.Concat(shown.Uses.Select(use => use.Kind.One)))}"
            ),
        ]);
    }

    /// <summary>A demonstration's cautions; house rules come first.</summary>
    public static IReadOnlyList<Caution> For(LessonDemonstration shown) => [.. In(shown).Select(hazard => Standing(hazard, [], [shown]))];

    /// <summary>A control's cautions: what is shown, and what the heat of its bread does to whoever takes it out.</summary>
    public static IReadOnlyList<Caution> ForControl(LessonDemonstration shown, LessonFormula bread)
    {
        ArgumentNullException.ThrowIfNull(bread);
        return [.. WithFirstAid([.. In(shown), .. In(bread).Intersect(OfTheHeat)]).Select(hazard => OnACard(Standing(hazard, [], [])))];
    }

    /// <summary>A formula's own cautions with those that it lacks behind them; house rules come first.</summary>
    public static IReadOnlyList<Caution> For(LessonFormula formula)
    {
        ArgumentNullException.ThrowIfNull(formula);
        return Completed(formula.Cautions, In(formula), [formula], []);
    }

    /// <summary>
    /// The same for the bench, where nobody reads for long: rules as they stand on a card. What is declared stands there by itself; of it
    /// only what to keep away from is told.
    /// </summary>
    public static IReadOnlyList<Caution> AtTheBench(LessonFormula formula) => [.. For(formula).Select(OnACard)];

    /// <summary>A lesson's cautions for a page that has a table of what each bread is declared to hold.</summary>
    public static IReadOnlyList<Caution> BesideTheTable(Lesson lesson) =>
        [
            .. For(lesson)
                .Select(caution =>
                    caution.Of == Hazard.Allergens
                        ? caution with
                        {
                            Text = $"What each bread is declared to hold stands in the table below. {KeptApart} {AllergyCare.ForEverybody}",
                        }
                        : caution
                ),
        ];

    /// <summary>A lesson's own cautions with what its formulas make necessary behind them.</summary>
    public static IReadOnlyList<Caution> For(Lesson lesson)
    {
        ArgumentNullException.ThrowIfNull(lesson);
        return Completed(
            lesson.Cautions,
            [.. lesson.Formulas.SelectMany(In).Concat(lesson.Demonstrations.SelectMany(In)).Prepend(Hazard.HouseRules).Distinct().Order()],
            lesson.Formulas,
            lesson.Weighing
        );
    }

    /// <summary>
    /// The rule in a few words, of an authored caution that of the hazard it speaks of; empty where nobody has written one.
    /// </summary>
    public static string InShort(Caution caution)
    {
        ArgumentNullException.ThrowIfNull(caution);
        return caution.InShort.Length > 0
            ? caution.InShort
            : Spoken(caution).Select(hazard => Standing(hazard, [], []).InShort).FirstOrDefault(rule => rule.Length > 0) ?? "";
    }

    /// <summary>True if a caution speaks of a hazard: a standing one of its own, an authored one of those that it replaces.</summary>
    public static bool Speaks(Caution caution, Hazard hazard) => Spoken(caution).Contains(hazard);

    /// <summary>What the standing caution of a hazard is called.</summary>
    public static string TitleOf(Hazard hazard) => Standing(hazard, [], []).Title;

    /// <summary>
    /// The hazards whose standing cautions an authored one looks like by its title and does not replace: both are printed.
    /// </summary>
    public static IReadOnlyList<Hazard> Alike(Caution caution)
    {
        ArgumentNullException.ThrowIfNull(caution);
        return [.. HazardWords.InTitle(caution.Title).Where(HazardNames.CanBeReplaced).Except(caution.InPlaceOf)];
    }

    private static IReadOnlyList<Hazard> Spoken(Caution caution)
    {
        ArgumentNullException.ThrowIfNull(caution);
        return caution.Of is { } own ? [own] : [.. caution.InPlaceOf.Where(HazardNames.CanBeReplaced)];
    }

    private static IReadOnlyList<Caution> Completed(
        IReadOnlyList<Caution> authored,
        IReadOnlyList<Hazard> hazards,
        IReadOnlyList<LessonFormula> breads,
        IReadOnlyList<LessonDemonstration> shown
    )
    {
        var spoken = authored.SelectMany(Spoken).ToHashSet();
        var missing = hazards.Where(hazard => !spoken.Contains(hazard)).ToList();
        return
        [
            .. missing.Where(hazard => hazard == Hazard.HouseRules).Select(hazard => Standing(hazard, breads, shown)),
            .. authored,
            .. missing.Where(hazard => hazard != Hazard.HouseRules).Select(hazard => Standing(hazard, breads, shown)),
        ];
    }

    private static Caution OnACard(Caution caution) => caution.OnACard.Length > 0 ? caution with { Text = caution.OnACard } : caution;

    private static Caution Standing(Hazard hazard, IReadOnlyList<LessonFormula> breads, IReadOnlyList<LessonDemonstration> shown) =>
        Words(hazard, breads, shown) with
        {
            Of = hazard,
        };

    private static Caution Words(Hazard hazard, IReadOnlyList<LessonFormula> breads, IReadOnlyList<LessonDemonstration> shown) =>
        hazard switch
        {
            Hazard.HouseRules => new("House rules first", HouseRules, "common practice, no source"),
            Hazard.RawFlour => new(
                "Raw flour",
                $"Nobody tastes dough or batter: raw flour has not been treated to kill germs{(breads.Any(HasEgg) ? ", and raw egg may carry salmonella" : "")}. Wash hands, bowls and benches after it.",
                "US FDA and CDC advice on raw flour, after the outbreak of 2016"
            )
            {
                InShort = "Taste no dough; wash hands after flour",
                OnACard = "Nobody tastes dough or batter. Wash hands, bowls and benches after it.",
            },
            // What is shown for a few minutes has its ingredients told, and not what all are told of the breads.
            Hazard.Allergens when breads.Count == 0 && shown is [var alone] => new(
                "Allergens",
                $"{Declared(alone)} {KeptFromBreads}",
                AllergyCare.Law
            )
            {
                OnACard = AllergyCare.AtTheBench,
            },
            Hazard.Allergens => new(
                "Allergens",
                $"{Declared(breads, shown)} {KeptApart} {AllergyCare.ForEverybody}",
                $"{AllergyCare.Law}; {AllergyCare.InhaledFlour}"
            )
            {
                OnACard = AllergyCare.AtTheBench,
            },
            Hazard.OpenFlame => new(
                "Burner or open flame",
                "Handles turned inwards, sleeves and cloths away, nobody leaves a lit burner. Turn it off before the pan is moved.",
                "common practice, no source"
            )
            {
                InShort = "Handles inwards; never leave a lit burner",
            },
            Hazard.Scald => new(
                "Scalds",
                "Hot water is poured by one person, slowly, away from hands and faces; nobody reaches over a kettle, and its lid stays on.",
                "common practice, no source"
            )
            {
                InShort = "One pours, slowly; lids stay on",
            },
            Hazard.HotOven => new(
                "Hot oven and tins",
                "Dry oven gloves only: a wet cloth passes the heat on as steam. Stand aside as the door opens, and say “hot behind you”.",
                "common practice, no source"
            )
            {
                InShort = "Dry gloves; stand aside as the door opens",
            },
            Hazard.HotFat => new(
                "Hot fat",
                "Nothing wet near it: water under hot fat boils at once and throws it out. Thin film, dry tools, arms covered.",
                "common practice, no source"
            )
            {
                InShort = "Nothing wet near hot fat",
            },
            Hazard.Frying => new(
                "Deep fat",
                "The vessel is half full at most, on a level place, never left and never moved hot. No drop of water: spoons, skimmer and hands are dry, and what goes in slides in close above the fat, away from you. Above 200 °C (392 °F), or when it smokes, the heat goes off. If it burns: heat off, lid on, never water; a lid, a fire blanket and an extinguisher for burning fat (wet chemical, class F in Europe, class K in North America) lie within reach. What the lid does not put out: leave, and call.",
                "common practice, no source; extinguishers by BS 5306-8 and NFPA 10; fat at 170 to 190 °C (338 to 374 °F), from memory"
            )
            {
                InShort = "Never water on burning fat: heat off, lid on",
                OnACard =
                    "Half full at most, level, never left, never moved hot. Spoons and hands dry; food slides in close above the fat, away from you. Smoke, or above 200 °C (392 °F): heat off. Lid, fire blanket and an extinguisher for burning fat lie within reach. Fire: heat off, lid on, never water. What the lid does not put out: leave, and call.",
            },
            Hazard.HotPlate => new(
                "Hot plate or pan",
                "It stays hot long after the heat is off, and does not look it: turn with tongs or a spatula, and mark it until it is cold.",
                "common practice, no source"
            )
            {
                InShort = "Hot long after the heat is off: use tongs",
            },
            Hazard.Microwave => new(
                "Microwave",
                "It heats unevenly and goes on for a while: let it stand a minute, stir or turn, open away from the face, and probe in several places.",
                "FDA Food Code 3-401.12, from memory"
            )
            {
                InShort = "Let it stand; open away from your face",
            },
            Hazard.HotSugar => new(
                "Hot sugar",
                "Far hotter than boiling water, and it sticks to the skin: nobody tastes or touches it, nobody leaves it, and a bowl of cold water stands ready. What is poured in makes it boil up: stand back.",
                "common practice, no source"
            )
            {
                InShort = "It sticks and burns: never touch it",
            },
            Hazard.PressureCooker => new(
                "Pressure cooker",
                "Valve and seal are looked at first; two thirds full at most, and opened only when its pressure is gone, the lid away from the face.",
                "common practice, no source"
            )
            {
                InShort = "Open it when its pressure is gone",
            },
            Hazard.Grill => new(
                "Grill",
                "It browns in seconds and stays hot: nobody leaves it, no paper or cloth comes near it, and trays come out with dry gloves. Fat that drips can catch fire.",
                "common practice, no source"
            )
            {
                InShort = "Never left; no paper near it",
            },
            Hazard.Torch => new(
                "Blow torch",
                "Over a tray that cannot burn, away from paper, cloths and sleeves; the flame points at nobody. Off at once when it is done, and stood upright until it is cold.",
                "common practice, no source"
            )
            {
                InShort = "Point it at nobody; off at once",
            },
            Hazard.Lye => new(
                "Lye",
                "It burns skin and eyes: goggles, gloves and long sleeves for whoever is near. Lye goes into cold water, never water onto lye, and into no aluminium. Splashed on skin or eyes: rinse at once under running water for 20 minutes or more, and call for help.",
                "common practice, no source; rinsing: safety data sheets of sodium hydroxide, from memory"
            )
            {
                InShort = "Goggles and gloves; lye into cold water",
                OnACard =
                    "Goggles, gloves, long sleeves. Lye into cold water, never water onto lye; no aluminium. Splashed: running water for 20 minutes or more, and call for help.",
            },
            Hazard.DeepCold => new(
                "Dry ice or liquid nitrogen",
                "Dry loose gloves and goggles; in an aired room and an open vessel, for its gas suffocates and bursts what is shut. Nobody eats it, nor what still holds some.",
                "US FDA advice on liquid nitrogen and dry ice in food (2018), from memory"
            )
            {
                InShort = "Never shut in, never eaten",
            },
            Hazard.Mandoline => new(
                "Mandoline",
                "Only with its guard or a glove that cannot be cut, and the last of each piece stays whole. Never left in a sink.",
                "common practice, no source"
            )
            {
                InShort = "Only with its guard",
            },
            Hazard.Blender => new(
                "Blender or food processor",
                "Unplugged before a hand or a spoon goes in; hot things fill a third of it at most, lid held under a cloth. Its blade is washed by itself and never left in a sink.",
                "common practice, no source"
            )
            {
                InShort = "Unplug it before anything goes in",
            },
            Hazard.Steam => new(
                "Steam",
                "Steam gives up about 2257 kJ for every kilogram that condenses on the skin. Open away from the face, with a dry glove.",
                "heat of vaporisation of water at 100 °C (212 °F), IAPWS steam tables"
            )
            {
                InShort = "Open away from your face",
                OnACard = "Open away from the face, with a dry glove.",
            },
            Hazard.Blade => new(
                "Knives and skewers",
                "Point down and away, carried at the side, never left in a sink.",
                "common practice, no source"
            )
            {
                InShort = "Point down and away",
            },
            Hazard.Mixer => new("Mixer", "Hands, hair and tools out of the bowl while it turns.", "common practice, no source")
            {
                InShort = "Hands and hair out while it turns",
            },
            Hazard.Balloon => new(
                "Balloons",
                "Many are of latex, to which people can be allergic, and no food label names it: ask first, or use a nitrile glove. It may burst: faces away.",
                "common practice, no source"
            )
            {
                InShort = "Latex: ask first; faces away",
            },
            Hazard.Probe => new(
                "Probes",
                "Cleaned and sanitised before each use, and always between raw and baked.",
                "FDA Food Code 4-602.11 and 4-702.11, from memory"
            )
            {
                InShort = "Clean before each use",
            },
            Hazard.FirstAid => new(
                "First aid for a burn",
                "At once under cool running water for 20 minutes, rings and watches off, nothing else on it; then call the first-aider.",
                "British Burn Association, First Aid Clinical Practice Guidelines (2018)"
            )
            {
                InShort = "20 minutes under cool running water",
            },
            Hazard.Holding => new(
                "Holding",
                FormattableString.Invariant(
                    $"Batter, egg, milk and what is filled with them: held warm at {Hot.Celsius:0} °C ({Hot.Fahrenheit:0} °F) or above, cold at {Cold.Celsius:0} °C ({Cold.Fahrenheit:0} °F) or below; what has stood in between for 4 hours is thrown away. Some local codes ask for 60 °C (140 °F). Plain bread, baked through, keeps covered at room temperature."
                ),
                "FDA Food Code 3-501.16 and 3-501.19; plain bread: common practice, local codes come first"
            )
            {
                InShort = "What stood in between for 4 hours goes",
                OnACard = FormattableString.Invariant(
                    $"Batter, egg, milk and fillings: {Hot.Celsius:0} °C ({Hot.Fahrenheit:0} °F) or above, or {Cold.Celsius:0} °C ({Cold.Fahrenheit:0} °F) or below; what stood in between for 4 hours is thrown away."
                ),
            },
            Hazard.Freezing => new(
                "Freezing and thawing",
                FormattableString.Invariant(
                    $"What is baked cools first: with egg, milk or a filling from 57 °C (135 °F) to 21 °C (70 °F) within 2 hours and to {Cold.Celsius:0} °C ({Cold.Fahrenheit:0} °F) within 4 more. It is wrapped, named and dated, stays frozen hard, and thaws in a refrigerator at {Cold.Celsius:0} °C ({Cold.Fahrenheit:0} °F) or below, or as it is heated. Dry gloves for frozen trays. Local codes come first."
                ),
                "FDA Food Code 3-501.11, 3-501.13 and 3-501.14, from memory"
            )
            {
                InShort = "Name and date it; thaw it cold",
                OnACard = FormattableString.Invariant(
                    $"Cooled first, wrapped, named and dated. Thawed at {Cold.Celsius:0} °C ({Cold.Fahrenheit:0} °F) or below, or as it is heated. Dry gloves for frozen trays."
                ),
            },
            Hazard.Reheating => new(
                "Reheating",
                "What is heated again to be held hot comes to 74 °C (165 °F) all through within 2 hours; from a microwave it is stirred or turned and stands covered for 2 minutes; it is heated again once. Local codes come first.",
                "FDA Food Code 3-403.11, from memory"
            )
            {
                InShort = "Hot all through, and once only",
            },
        };

    private static bool HasEgg(LessonFormula bread) => bread.Ingredients.Any(ingredient => ingredient.Role == IngredientRole.Egg);

    /// <summary>Bread by bread; the breads of a series that declare the same, once.</summary>
    private static string Declared(IReadOnlyList<LessonFormula> breads, IReadOnlyList<LessonDemonstration> shown) =>
        string.Join(
            " ",
            breads
                .GroupBy(bread => (Series: bread.Place?.OfId ?? bread.Formula.Id, Declared: Declared(bread)))
                .Select(alike =>
                    $"{(breads.Count > 1 ? $"{string.Join(", ", SeriesTitles.Of(alike, breads))}, declared" : "Declared")}: {alike.Key.Declared}"
                )
                .Concat(shown.Select(each => $"Shown, {each.Name}: {Declared(each)}"))
        );

    private static string Declared(LessonFormula bread)
    {
        var allergens = AllergenDeclaration.Of(bread);
        return $"{AllergyText.Declared(allergens)}. Read the labels for {AllergyText.Unknown(allergens)}.";
    }

    private static string Declared(LessonDemonstration shown)
    {
        var allergens = AllergenDeclaration.Of(shown);
        var labels = $"Read the labels for {AllergyText.Unknown(allergens)}.";
        return allergens.Declared.Count > 0 ? $"Declared: {AllergyText.Declared(allergens)}. {labels}" : labels;
    }

    /// <summary>What a demonstration weighs out that somebody has to read a label of.</summary>
    private static IEnumerable<WeighedIngredient> Weighed(LessonDemonstration shown) =>
        shown.Ingredients.Where(line => !TapWater.Is(line.Ingredient));

    /// <summary>
    /// What a method says, sets out and occupies. What a bread is called is not what is done to it: steamed buns are named in steps that
    /// steam nothing.
    /// </summary>
    private static string Named(LessonFormula formula) =>
        string.Join(
            ". ",
            formula
                .Steps.Select(step => WholeWords.Blanked(step.Text.OwnWords, formula.Formula.Title))
                .Concat(formula.Equipment.Select(tool => tool.Name))
                .Concat(formula.Steps.SelectMany(step => step.Work.Uses).Select(use => use.Kind.One))
        );

    /// <summary>Deep fat has its own caution, beside which that for a greased pan would be wrong.</summary>
    private static IReadOnlyList<Hazard> WithFirstAid(HashSet<Hazard> found)
    {
        if (found.Contains(Hazard.Frying))
            found.Remove(Hazard.HotFat);
        return [.. (found.Overlaps(Burning) ? found.Append(Hazard.FirstAid) : found).Order()];
    }

    private static bool Uses(MethodStep step, params string[] kinds) => Uses(step.Work.Uses, kinds);

    private static bool Uses(IReadOnlyList<EquipmentCount> uses, params string[] kinds) => uses.Any(use => kinds.Contains(use.Kind.One));

    private static bool Cooks(IReadOnlyList<MethodStep> steps, params CookingWay[] ways) =>
        steps.Any(step => step.Way is { } way && ways.Contains(way));

    private static IEnumerable<Hazard> When(bool applies, Hazard hazard) => applies ? [hazard] : [];
}
