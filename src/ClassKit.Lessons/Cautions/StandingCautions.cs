using ClassKit.Baking;

namespace ClassKit.Lessons;

/// <summary>The cautions that belong to a method whether its author thought of them or not.</summary>
public static class StandingCautions
{
    /// <summary>The sentence that stands on every page of a pack.</summary>
    public const string HouseRules = "Local codes and the instructor’s own safety rules come before anything printed here.";

    private static readonly Temperature Hot = HoldingRule.FoodCode.Hot;
    private static readonly Temperature Cold = HoldingRule.FoodCode.Cold;

    /// <summary>Words by which an authored caution is known to speak of a hazard: all of one group.</summary>
    private static readonly Dictionary<Hazard, string[][]> Words = new()
    {
        [Hazard.HouseRules] = [["local codes"]],
        [Hazard.RawFlour] = [["raw", "flour"]],
        [Hazard.Allergens] = [["allerg"]],
        [Hazard.OpenFlame] = [["flame"], ["burner"]],
        [Hazard.HotFat] = [["hot", "fat"], ["hot", "oil"]],
        [Hazard.Steam] = [["steam"]],
        [Hazard.Holding] = [["4 hours"], ["°c", "hold"]],
    };

    /// <summary>The hazards of a formula.</summary>
    public static IReadOnlyList<Hazard> In(LessonFormula formula)
    {
        ArgumentNullException.ThrowIfNull(formula);
        var steps = formula.Steps;
        return
        [
            Hazard.HouseRules,
            .. When(formula.Formula.Lines.Any(line => line.Ingredient.Role == IngredientRole.Flour), Hazard.RawFlour),
            .. When(formula.Allergens.Count > 0, Hazard.Allergens),
            .. When(steps.Any(step => Uses(step, "burner", "griddle", "fryer")), Hazard.OpenFlame),
            .. When(steps.Any(step => step.Work.OvenReady || Uses(step, "fryer")), Hazard.HotFat),
            .. When(formula.Formula.Leavening == Leavening.Steam || steps.Any(step => Uses(step, "steamer")), Hazard.Steam),
            Hazard.Holding,
        ];
    }

    /// <summary>A formula's own cautions with those that it lacks behind them; house rules come first.</summary>
    public static IReadOnlyList<Caution> For(LessonFormula formula)
    {
        ArgumentNullException.ThrowIfNull(formula);
        return Completed(formula.Cautions, In(formula), formula.Allergens);
    }

    /// <summary>A lesson's own cautions with what its formulas make necessary behind them.</summary>
    public static IReadOnlyList<Caution> For(Lesson lesson)
    {
        ArgumentNullException.ThrowIfNull(lesson);
        return Completed(
            lesson.Cautions,
            [.. lesson.Formulas.SelectMany(In).Prepend(Hazard.HouseRules).Distinct().Order()],
            [.. lesson.Formulas.SelectMany(formula => formula.Allergens).Distinct().Order(StringComparer.Ordinal)]);
    }

    /// <summary>True if an authored caution speaks of a hazard.</summary>
    public static bool Speaks(Caution caution, Hazard hazard)
    {
        ArgumentNullException.ThrowIfNull(caution);
        var text = $"{caution.Hazard} {caution.Text}";
        return Words[hazard].Any(group => group.All(word => text.Contains(word, StringComparison.OrdinalIgnoreCase)));
    }

    private static IReadOnlyList<Caution> Completed(IReadOnlyList<Caution> authored, IReadOnlyList<Hazard> hazards, IReadOnlyList<string> allergens)
    {
        var missing = hazards.Where(hazard => !authored.Any(caution => Speaks(caution, hazard))).ToList();
        return
        [
            .. missing.Where(hazard => hazard == Hazard.HouseRules).Select(hazard => Standing(hazard, allergens)),
            .. authored,
            .. missing.Where(hazard => hazard != Hazard.HouseRules).Select(hazard => Standing(hazard, allergens)),
        ];
    }

    private static Caution Standing(Hazard hazard, IReadOnlyList<string> allergens) => hazard switch
    {
        Hazard.HouseRules => new("House rules first", HouseRules, "common practice, no source"),
        Hazard.RawFlour => new("Raw flour", "Nobody tastes dough or batter: raw flour has not been treated to kill germs. Wash hands, bowls and benches after it.", "US FDA and CDC advice on raw flour, after the outbreak of 2016"),
        Hazard.Allergens => new("Allergens", $"It holds {string.Join(", ", allergens)}. Label the tray, and keep its tools apart from those of other breads.", "US FD&C Act 201(qq) as amended by the FASTER Act of 2021; Regulation (EU) 1169/2011, Annex II"),
        Hazard.OpenFlame => new("Burner or open flame", "Handles turned inwards, sleeves and cloths away, nobody leaves a lit burner. Turn it off before the pan is moved.", "common practice, no source"),
        Hazard.HotFat => new("Hot fat", "Nothing wet near it: water under hot fat boils at once and throws it out. Thin film, dry tools, arms covered.", "common practice, no source"),
        Hazard.Steam => new("Steam", "Steam gives up about 2257 kJ for every kilogram that condenses on the skin. Open away from the face, with a dry glove.", "heat of vaporisation of water at 100 °C, IAPWS steam tables"),
        Hazard.Holding => new(
            "Holding",
            FormattableString.Invariant($"Served warm later, it is held at {Hot.Celsius:0} °C ({Hot.Fahrenheit:0} °F) or above; cold, at {Cold.Celsius:0} °C ({Cold.Fahrenheit:0} °F) or below; what has stood in between for 4 hours is thrown away. Some local codes ask for 60 °C (140 °F)."),
            "FDA Food Code 3-501.16 and 3-501.19"),
    };

    private static bool Uses(MethodStep step, params string[] kinds) => step.Work.Uses.Any(use => kinds.Contains(use.Kind.One));

    private static IEnumerable<Hazard> When(bool applies, Hazard hazard) => applies ? [hazard] : [];
}
