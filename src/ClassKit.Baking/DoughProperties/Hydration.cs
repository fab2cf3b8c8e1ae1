using ClassKit.Baking.Explanations;
using ClassKit.Baking.Formulas;
using ClassKit.Baking.Ingredients;

namespace ClassKit.Baking.DoughProperties;

/// <summary>How wet a baker's formula is, in the two ways that are in use and in two that a scientist asks for.</summary>
/// <param name="AddedLiquidPercent">Liquids in percent of the flour, counted whole: the baker's hydration.</param>
/// <param name="EffectivePercent">The water of everything but the flour, in percent of the flour.</param>
/// <param name="AllWaterPercent">All water, the flour's own too, in percent of the flour.</param>
/// <param name="MoistureShare">All water as a share of the whole dough, 0 to 1.</param>
/// <param name="Explanation">How it was computed.</param>
/// <remarks>Shares of water: USDA SR26; see <see cref="IngredientCatalog"/>.</remarks>
public sealed record Hydration(
    double AddedLiquidPercent,
    double EffectivePercent,
    double AllWaterPercent,
    double MoistureShare,
    Explanation Explanation
) : IExplained
{
    /// <summary>The hydration of a formula with flour in it.</summary>
    public static Computed<Hydration> Of(BakersFormula formula)
    {
        ArgumentNullException.ThrowIfNull(formula);
        if (FormulaSanity.Of(formula) is { } odd)
            return odd;
        var added = DoughWater.AddedLiquidPercent(formula);
        var effective = DoughWater.EffectivePercent(formula);
        var all = DoughWater.AllWaterPercent(formula);
        return new Hydration(
            added,
            effective,
            all,
            all / formula.TotalPercent,
            new(
                $"{formula.Title}: hydration",
                [
                    Sum(
                        "added liquid",
                        "liquids counted whole",
                        formula
                            .Lines.Where(line => line.Ingredient.Role == IngredientRole.Liquid)
                            .Select(line => Figures.PerHundredOf(line.Percent)),
                        added
                    ),
                    Sum(
                        "all added water",
                        "% × share of water, of everything but flour",
                        Waters(formula, line => line.Ingredient.Role != IngredientRole.Flour),
                        effective
                    ),
                    Sum(
                        "the flour's own water",
                        "% × share of water, of the flour",
                        Waters(formula, line => line.Ingredient.Role == IngredientRole.Flour),
                        all - effective
                    ),
                    Sum(
                        "all water",
                        "all added water + the flour's own",
                        [Figures.PerHundredOf(effective), Figures.PerHundredOf(all - effective)],
                        all
                    ),
                    new(
                        "moisture of the dough",
                        "all water / total %",
                        $"{Figures.PerHundredOf(all)} / {Figures.PerHundredOf(formula.TotalPercent)}",
                        Figures.Percent(all / formula.TotalPercent)
                    ),
                ],
                "Water by mass: USDA National Nutrient Database, release 26."
            )
        );
    }

    private static IEnumerable<string> Waters(BakersFormula formula, Func<FormulaLine, bool> which) =>
        formula
            .Lines.Where(line => which(line) && line.Ingredient.WaterShare > 0)
            .Select(line => $"{Figures.PerHundredOf(line.Percent)} × {Figures.Percent(line.Ingredient.WaterShare)}");

    private static ExplainedStep Sum(string quantity, string formula, IEnumerable<string> parts, double percent) =>
        new(quantity, formula, string.Join(" + ", parts.DefaultIfEmpty("0 %")), Figures.PerHundredOf(percent));
}
