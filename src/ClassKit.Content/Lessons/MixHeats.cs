using ClassKit.Baking.Ingredients;
using ClassKit.BenchPlans.Classes;
using ClassKit.Content.Diagnostics;
using ClassKit.Content.Outline;
using ClassKit.Lessons.Authored;
using ClassKit.Lessons.Mixing;

namespace ClassKit.Content.Lessons;

/// <summary>Holds the mix temperature that a card asks against what its method can give: see <see cref="MixBalance"/>.</summary>
internal static class MixHeats
{
    /// <param name="asked">The line of the mix temperature; null where the file has none.</param>
    /// <param name="method">Where the steps stand.</param>
    /// <param name="formula">What was read.</param>
    /// <param name="problems">Where to note what is wrong.</param>
    public static void Check(int? asked, Section? method, LessonFormula formula, ProblemList problems)
    {
        var before = problems.Count;
        List<IngredientHeat> heats = [.. formula.Steps.SelectMany(step => step.Work.Heats)];
        foreach (var heat in heats.Where(heat => formula.Formula.Lines.All(line => line.Ingredient.Id != heat.Ingredient.Id)))
            problems.Add(
                method?.Line,
                $"A step's brackets warm, melt, temper, cook or boil {heat.Ingredient.Name.ToLowerInvariant()}, which is not in the formula",
                "Name an ingredient of the formula."
            );
        foreach (var twice in heats.GroupBy(heat => heat.Ingredient.Id).Where(IsTooMuch))
            problems.Add(
                method?.Line,
                $"Steps' brackets warm, melt, temper, cook or boil {twice.First().Ingredient.Name.ToLowerInvariant()} more than once",
                "Say it once, where it is brought to the temperature at which it is mixed, or of parts of it that come to no more than all: `cooks 30 % of whole milk`, and `warms whole milk` of the rest."
            );
        foreach (var heat in heats.Where(heat => heat.Kind == HeatKind.Melted && heat.Ingredient.Role != IngredientRole.Fat))
            problems.Add(
                method?.Line,
                $"A step's brackets melt {heat.Ingredient.Name.ToLowerInvariant()}, which is no fat",
                "Write `warms` for what is liquid."
            );
        foreach (
            var step in formula.Steps.Where(step =>
                step.Work.Heats.Any(heat => heat.Kind == HeatKind.Cooked) && step.Work.Uses.All(use => use.Kind != EquipmentKind.Burner)
            )
        )
            problems.Add(
                method?.Line,
                $"`{step.Name}` cooks a paste, and its brackets occupy no burner",
                "Write `burner` into its brackets: two teams cannot cook on one at the same moment."
            );
        foreach (var heat in heats.Where(heat => heat.Kind == HeatKind.Boiled && heat.Ingredient.Role != IngredientRole.Liquid))
            problems.Add(
                method?.Line,
                $"A step's brackets boil {heat.Ingredient.Name.ToLowerInvariant()}, which is no liquid",
                "Name the liquid that is poured over the flour, as in `boils water`; write `melts` for fat, and `cooks` for all that is in a pan with flour."
            );
        foreach (
            var step in formula.Steps.Where(step =>
                step.Work.Heats.Any(heat => heat.Kind == HeatKind.Boiled)
                && step.Work.Uses.All(use => use.Kind != EquipmentKind.Burner && use.Kind != EquipmentKind.Kettle)
            )
        )
            problems.Add(
                method?.Line,
                $"`{step.Name}` boils something, and its brackets occupy neither kettle nor burner",
                "Write `kettle` or `burner` into its brackets: it cannot be in use elsewhere meanwhile."
            );
        foreach (
            var heat in heats.Where(heat =>
                heat is { Kind: HeatKind.Boiled, IsOfAPart: false } && TapWater.Is(heat.Ingredient) && Scald.HasStood(formula, heat)
            )
        )
            if (TapWater.IsDrawnFor(formula))
                problems.Doubt(
                    method?.Line,
                    "All the water is boiled, and cards say how warm it is drawn for the mix",
                    "Say how much of it is poured over the flour, so that the card weighs it: `boils 40 % of the water`."
                );
        if (asked is null && heats.Exists(heat => heat.Kind == HeatKind.Warmed))
            problems.Add(
                method?.Line,
                "A step's brackets warm something, and nothing says how warm the mix should be",
                "Add `mix temperature: 24 °C` above, or take `warms` out."
            );
        if (problems.Count == before)
            Living(method, formula, problems);
        if (
            problems.Count == before
            && MixBalance.Of(formula, MixSettings.UsualKitchen).TryGet(out var mix, out _)
            && mix.OutOfReach is { } why
        )
            problems.Add(
                asked,
                FormattableString.Invariant(
                    $"In a kitchen of {MixSettings.UsualKitchen.Celsius:0} °C, which is taken where a lesson is read without its class, its method cannot give the mix temperature: {why.Message.TrimEnd('.')}"
                ),
                mix.Warmed.Count == 0 ? Advice(formula) : "Ask for a temperature within reach, or warm more of what goes in."
            );
    }

    /// <summary>Parts of an ingredient, and the rest of it once, may each be brought to a temperature.</summary>
    private static bool IsTooMuch(IEnumerable<IngredientHeat> ofOne)
    {
        var (parts, wholes) = (ofOne.Where(heat => heat.IsOfAPart).Sum(heat => heat.Share), ofOne.Count(heat => !heat.IsOfAPart));
        return wholes > 1 || parts > 1 + Rounding || (wholes == 1 && parts > 1 - Rounding);
    }

    private const double Rounding = 1e-6;

    /// <summary>
    /// What is scalded is doubted where yeast or egg meets it hot. Yeast is weakened above the warmest liquid that is used with it, egg
    /// white sets from some 61 °C on: common practice, no source.
    /// </summary>
    private static void Living(Section? method, LessonFormula formula, ProblemList problems)
    {
        if (
            !formula.Steps.SelectMany(step => step.Work.Heats).Any(heat => heat.Kind == HeatKind.Boiled && Scald.IsHot(formula, heat))
            || !MixBalance.Of(formula, MixSettings.UsualKitchen).TryGet(out var mix, out _)
        )
            return;
        var warm = mix.Mixed.Typical;
        var harmed =
            formula.Formula.IsFermented && warm.Celsius > MixSettings.Default.WarmestLiquid.Celsius
                ? FormattableString.Invariant($"yeast is weakened above {MixSettings.Default.WarmestLiquid.Celsius:0} °C")
            : formula.Formula.Lines.Any(line => line.Ingredient.Role == IngredientRole.Egg) && warm.Celsius > EggSets
                ? FormattableString.Invariant($"egg sets from {EggSets:0} °C on")
            : "";
        if (harmed.Length > 0)
            problems.Doubt(
                method?.Line,
                FormattableString.Invariant(
                    $"With what is boiled the mix comes to {warm.Celsius:0} °C ({warm.Fahrenheit:0} °F), and {harmed}"
                ),
                "Let the scald stand before the rest is mixed in: a step of its own with `unattended`, behind the one that boils and before the one that mixes. It then counts as cool as the kitchen."
            );
    }

    private const double EggSets = 61;

    private static string Advice(LessonFormula formula)
    {
        var liquid = formula
            .Formula.Lines.Where(line => line.Ingredient.Role is IngredientRole.Liquid or IngredientRole.Egg)
            .MaxBy(line => line.Percent)
            ?.Ingredient.Name.ToLowerInvariant();
        return (
                liquid is null
                    ? ""
                    : $"Write into the brackets of the step that brings it to temperature: `warms {liquid}`; cards then say how warm. "
            ) + "Leave `mix temperature` out, and the mix is taken as it comes: cards say how that is.";
    }
}
