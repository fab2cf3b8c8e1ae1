using ClassKit.Baking.Explanations;
using ClassKit.Baking.Formulas;
using ClassKit.Baking.Ingredients;
using ClassKit.Baking.Quantities;

namespace ClassKit.Baking.Chemistry;

/// <summary>The sodium that salt, soda and baking powder bring. What milk, eggs and the rest hold by nature is not counted.</summary>
public static class Sodium
{
    /// <summary>In a mass of dough.</summary>
    /// <param name="formula">With flour in it.</param>
    /// <param name="dough">Above 0: a piece's, for the sodium of a portion.</param>
    /// <remarks>Shares of sodium: USDA SR28; see <see cref="IngredientCatalog"/>.</remarks>
    public static Computed<Mass> In(BakersFormula formula, Mass dough)
    {
        ArgumentNullException.ThrowIfNull(formula);
        if ((FormulaSanity.Of(formula) ?? Sanity.Mass(dough, "dough", "no-dough")) is { } odd)
            return odd;
        var total = formula.TotalPercent;
        var bearing = formula.Lines.Where(line => line.Ingredient.SodiumShare is not null).ToList();
        var percent = bearing.Sum(line => line.Percent * line.Ingredient.SodiumShare!.Value);
        var sodium = dough * (percent / total);
        return new Explanation(
            "Sodium",
            [
                .. bearing.Select(line => new ExplainedStep(
                    $"sodium of {line.Ingredient.Name}",
                    "its % × share of sodium",
                    $"{Figures.PerHundredOf(line.Percent)} × {Figures.Percent(line.Ingredient.SodiumShare!.Value)}",
                    Figures.PerHundredOf(line.Percent * line.Ingredient.SodiumShare!.Value)
                )),
                new(
                    "sodium",
                    "dough × all of them / total %",
                    $"{Figures.Grams(dough)} × {Figures.Show(percent)} / {Figures.Exact(total)}",
                    Figures.Grams(sodium)
                ),
            ],
            "Salt, soda and baking powder only."
        ).For(sodium);
    }
}
