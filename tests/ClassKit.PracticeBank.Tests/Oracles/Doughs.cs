using ClassKit.Baking.Formulas;
using ClassKit.Baking.Ingredients;
using ClassKit.Baking.Quantities;

namespace ClassKit.PracticeBank.Tests.Oracles;

/// <summary>Formulas and batches out of an exercise's numbers.</summary>
internal static class Doughs
{
    private static readonly Ingredient Seeds = new(
        "seeds",
        "Sunflower seeds",
        IngredientRole.Other,
        0,
        null,
        null,
        [],
        "made for this test"
    );

    /// <summary>Old starter as an ingredient of the next, whatever is in it.</summary>
    private static readonly Ingredient Starter = Seeds with { Id = "starter", Name = "Starter" };

    public static BakersFormula Of(params IReadOnlyList<(string Ingredient, double Percent)> lines) =>
        new("dough", "Dough", Leavening.Yeast, [.. lines.Select(line => new FormulaLine(Find(line.Ingredient), line.Percent))]);

    public static WeighedIngredient Weighed(string ingredient, double grams) => new(Find(ingredient), Mass.FromGrams(grams));

    public static BakersFormula FromWeights(params IReadOnlyList<WeighedIngredient> recipe) =>
        Percentages.FromWeights("dough", "Dough", Leavening.Yeast, recipe).Value;

    public static double GramsOf(this Batch batch, string ingredient) =>
        batch.Lines.Single(line => line.Ingredient.Id == ingredient).Exact.Grams;

    /// <summary>As a fraction, the way a percent cell holds it.</summary>
    public static double ShareOf(this BakersFormula formula, string ingredient) =>
        formula.Lines.Single(line => line.Ingredient.Id == ingredient).Percent / 100;

    private static Ingredient Find(string id) =>
        id == Seeds.Id ? Seeds
        : id == Starter.Id ? Starter
        : IngredientCatalog.Get(id);
}
