using ClassKit.Baking.Explanations;
using ClassKit.Baking.Quantities;

namespace ClassKit.Baking.Formulas;

/// <summary>Turns weights into baker's percentages.</summary>
public static class Percentages
{
    /// <summary>
    /// The formula behind a recipe in weights: each mass × 100 / all flour. Lines of the same ingredient are combined, in the order of
    /// first use.
    /// </summary>
    /// <param name="id">The formula's id.</param>
    /// <param name="title">What it makes.</param>
    /// <param name="leavening">What chiefly makes it rise.</param>
    /// <param name="recipe">Masses in any unit; above 0.</param>
    /// <remarks>
    /// Check value: 28 oz of egg on 64 oz of flour are 43.75 % (Texas Education Agency, "Calculating Baker's Percentages (Key)", 2015).
    /// </remarks>
    public static Computed<BakersFormula> FromWeights(string id, string title, Leavening leavening, IReadOnlyList<WeighedIngredient> recipe)
    {
        ArgumentNullException.ThrowIfNull(recipe);
        if (recipe.FirstOrDefault(line => line.Mass.Grams <= 0) is { } empty)
            return new Impossibility(
                "bad-mass",
                $"{empty.Ingredient.Name} stands at {Figures.Grams(empty.Mass)}.",
                "A mass is above 0; leave the ingredient out if there is none."
            );
        if (
            recipe.Select(line => Sanity.Mass(line.Mass, line.Ingredient.Name, "bad-mass")).FirstOrDefault(wrong => wrong is not null) is
            { } tooMuch
        )
            return tooMuch;
        var flour = Mass.FromGrams(recipe.Sum(line => line.Mass.Grams * line.Ingredient.FlourShare));
        if (flour.Grams <= 0)
            return new Impossibility(
                "no-flour",
                $"{title} has no flour.",
                "Baker's percentages are shares of the flour: name at least one flour."
            );
        var lines = Combining.Same(recipe);
        BakersFormula formula = new(
            id,
            title,
            leavening,
            [.. lines.Select(line => new FormulaLine(line.Ingredient, PerHundred.Of(line.Mass.Grams, flour.Grams)))]
        );
        if (FormulaSanity.Of(formula) is { } odd)
            return odd;
        return new Explanation(
            $"{title}: baker's percentages",
            [
                new(
                    "flour",
                    "all flours together",
                    string.Join(
                        " + ",
                        lines
                            .Where(line => line.Ingredient.FlourShare > 0)
                            .Select(line => Figures.Grams(line.Mass * line.Ingredient.FlourShare))
                    ),
                    Figures.Grams(flour)
                ),
                .. lines.Select(line => new ExplainedStep(
                    line.Ingredient.Name,
                    "its mass / flour",
                    $"{Figures.Grams(line.Mass)} / {Figures.Grams(flour)}",
                    Figures.Percent(line.Mass / flour)
                )),
                new(
                    "total",
                    "the sum of all percentages",
                    string.Join(" + ", formula.Lines.Select(line => Figures.PerHundredOf(line.Percent))),
                    Figures.PerHundredOf(formula.TotalPercent)
                ),
            ],
            "Baker's percentages: all flour together is 100 %."
        ).For(formula);
    }
}
