using ClassKit.Baking.Explanations;
using ClassKit.Baking.Household;
using ClassKit.Baking.Ingredients;
using ClassKit.Baking.Quantities;
using ClassKit.BenchSums.Catalogue;
using ClassKit.BenchSums.Inputs;
using ClassKit.BenchSums.Results;

namespace ClassKit.BenchSums.Sums;

/// <summary>Cups and spoons to masses and back.</summary>
internal static class MeasureSums
{
    private static readonly SumInput<Ingredient> What = Ask.For(
        "ingredient",
        "what is measured",
        Ingredients.Notation,
        "all-purpose flour"
    );
    private static readonly SumInput<Mass> Amount = Ask.For("amount", "how much", Notations.Mass, "300 g");
    private static readonly SumInput<Volume> Measured = Ask.For("measure", "cups or spoons of it", Notations.Volume, "2 1/2 cups");
    private static readonly SumInput<FlourCup> Cup = Ask.Usually(
        "cup-of-flour",
        "how a cup of flour is filled",
        Notations.OneOf(FlourCup.All, cup => cup.Name),
        FlourCup.Usda.Name
    );

    public static IReadOnlyList<BenchSum> All { get; } =
    [new("to-cups", "How many cups or spoons?", SumTopic.Measures, [What, Amount, Cup], values =>
        {
            var ingredient = values.Of(Cup).Applied(values.Of(What));
            return HouseholdMeasures.For(ingredient, values.Of(Amount)) is { } measure
                ? new SumResult([new("measure", new SumQuantity.OfMeasure(measure))], [measure.Explanation], [])
                : NoMeasure(ingredient);
        }), new("from-cups", "How much do cups or spoons hold?", SumTopic.Measures, [What, Measured, Cup], values =>
        {
            var ingredient = values.Of(Cup).Applied(values.Of(What));
            var cups = values.Of(Measured) / MeasureDefinition.UnitedStates.Cup;
            return HouseholdMeasures.OfCups(ingredient, cups) is { } mass
                ? new SumResult([new("mass", new SumQuantity.OfMass(mass))], [Working(ingredient, cups, mass)], [])
                : NoMeasure(ingredient);
        })];

    private static Explanation Working(Ingredient ingredient, double cups, Mass mass)
    {
        var shown = Figures.Exact(cups, 4);
        var cup = Figures.Show(mass.Grams / cups);
        return new(
            "Cups to mass",
            [new(ingredient.Name, "cups × mass of a cup", $"{shown} × {cup} g", QuantityText.Show(new SumQuantity.OfMass(mass)))],
            ingredient.Source
        );
    }

    private static Impossibility NoMeasure(Ingredient ingredient) =>
        new("no-household-weights", $"No cup or spoon of {ingredient.Name} is on record here.", "Weigh it.");
}
