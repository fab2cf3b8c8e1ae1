using ClassKit.Baking.Batches;
using ClassKit.Baking.Formulas;
using ClassKit.Baking.Ingredients;
using ClassKit.Baking.Quantities;
using ClassKit.Baking.Weighing;
using CsCheck;

namespace ClassKit.Baking.Tests.Formulas;

public sealed class PercentagesTests
{
    [Theory]
    // Texas Education Agency, "Math + Science = Quality Food: Calculating Baker's Percentages (Key)", 2015
    [InlineData(48, "skim_milk", 3, 6.25)]
    [InlineData(48, "water", 30, 62.5)]
    [InlineData(60, "instant_yeast", 1, 1.67)]
    [InlineData(60, "water", 24, 40)]
    [InlineData(60, "whole_milk", 3, 5)]
    [InlineData(64, "baking_powder", 3.25, 5.08)]
    [InlineData(64, "whole_egg", 28, 43.75)]
    [InlineData(64, "vegetable_oil", 16, 25)]
    [InlineData(15, "sugar", 26, 173.33)]
    [InlineData(15, "whole_egg", 12, 80)]
    public void Ounces_become_percentages(double flour, string id, double ounces, double percent) =>
        Assert.Equal(percent, PercentOf(flour, id, ounces), 0.005);

    [Theory]
    // The same key truncates these two: 23.958 is printed as 23.95 and 5.729 as 5.72
    [InlineData(48, "unsalted_butter", 11.5, 23.95)]
    [InlineData(48, "baking_powder", 2.75, 5.72)]
    public void The_key_truncates_and_we_round(double flour, string id, double ounces, double printed)
    {
        var percent = PercentOf(flour, id, ounces);
        Assert.Equal(printed, Math.Truncate(percent * 100) / 100, 1e-9);
        Assert.Equal(printed + 0.01, Math.Round(percent, 2, MidpointRounding.AwayFromZero), 1e-9);
    }

    [Fact]
    public void The_same_ingredient_twice_is_one_line()
    {
        var formula = Percentages.FromWeights("f", "F", Leavening.Yeast, [Of("bread_flour", 500), Of("water", 300), Of("water", 25)]).Value;
        Assert.Equal([100, 65], formula.Lines.Select(line => line.Percent));
    }

    [Fact]
    public void Percentages_of_a_batch_are_those_of_its_formula() =>
        Gen.Select(Gen.Double[1, 10_000], Doughs.AnyOf(Doughs.Buns, Doughs.Muffins, Doughs.ThreeFlours))
            .Sample(
                (flour, formula) =>
                {
                    var batch = Scaling.FromFlour(formula, Mass.FromGrams(flour), Scales.Common).Value;
                    var back = Percentages
                        .FromWeights(
                            "b",
                            "B",
                            formula.Leavening,
                            [.. batch.Lines.Select(line => new WeighedIngredient(line.Ingredient, line.Exact))]
                        )
                        .Value;
                    Assert.All(formula.Lines.Zip(back.Lines), pair =>
                        Assert.Equal(pair.First.Percent, pair.Second.Percent, pair.First.Percent * 1e-12)
                    );
                }
            );

    [Fact]
    public void Without_flour_there_are_no_percentages() =>
        Assert.Equal("no-flour", Percentages.FromWeights("c", "Custard", Leavening.Steam, [Of("whole_milk", 500)]).Why!.Code);

    [Fact]
    public void A_mass_of_nothing_is_explained() =>
        Assert.Equal("bad-mass", Percentages.FromWeights("c", "C", Leavening.Steam, [Of("bread_flour", 500), Of("salt", 0)]).Why!.Code);

    private static double PercentOf(double flour, string id, double ounces) =>
        Percentages
            .FromWeights(
                "f",
                "F",
                Leavening.Yeast,
                [new(IngredientCatalog.Get("ap_flour"), Mass.FromOunces(flour)), new(IngredientCatalog.Get(id), Mass.FromOunces(ounces))]
            )
            .Value.Lines[1]
            .Percent;

    private static WeighedIngredient Of(string id, double grams) => new(IngredientCatalog.Get(id), Mass.FromGrams(grams));
}
