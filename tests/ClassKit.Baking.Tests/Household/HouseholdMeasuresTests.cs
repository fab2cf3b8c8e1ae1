using ClassKit.Baking.Household;
using ClassKit.Baking.Ingredients;
using ClassKit.Baking.Quantities;
using CsCheck;

namespace ClassKit.Baking.Tests.Household;

public sealed class HouseholdMeasuresTests
{
    [Theory]
    // USDA SR28 household weights: 125 g, 200 g and 244 g to the cup, 50 g to the egg, 4.6 g and 6 g to the teaspoon; packets of dry yeast:
    // 7 g are 2 1/4 tsp
    [InlineData("ap_flour", 218.75, "1 3/4 cups")]
    [InlineData("ap_flour", 93.75, "3/4 cup")]
    [InlineData("ap_flour", 125, "1 cup")]
    [InlineData("whole_milk", 244.0 / 3, "1/3 cup")]
    [InlineData("whole_egg", 100, "2 large eggs")]
    [InlineData("whole_egg", 25, "1/2 large egg")]
    [InlineData("baking_powder", 9.2, "2 tsp")]
    [InlineData("baking_powder", 10.35, "2 1/4 tsp")]
    [InlineData("salt", 6, "1 tsp")]
    [InlineData("salt", 18, "1 tbsp")]
    [InlineData("salt", 0.75, "1/8 tsp")]
    [InlineData("salt", 1.1, "scant 1/4 tsp")] // an eighth is a third short: common practice, no source
    [InlineData("salt", 1.3, "1/4 tsp")]
    [InlineData("active_dry_yeast", 7, "2 1/4 tsp")]
    [InlineData("instant_yeast", 7, "2 1/4 tsp")]
    [InlineData("instant_yeast", 3.7, "1 1/4 tsp")]
    [InlineData("sugar", 225, "1 cup + 2 tbsp")]
    [InlineData("unsalted_butter", 113.5, "1/2 cup")]
    public void Masses_become_measures(string id, double grams, string text) =>
        Assert.Equal(text, HouseholdMeasures.For(IngredientCatalog.Get(id), Mass.FromGrams(grams))!.Text);

    [Fact]
    public void Two_teaspoons_of_baking_powder_weigh_9_2_grams() =>
        Assert.Equal(9.2, HouseholdMeasures.OfTeaspoons(IngredientCatalog.Get("baking_powder"), 2)!.Value.Grams, 1e-9); // USDA SR28

    [Fact]
    public void Three_quarters_of_a_cup_of_flour_weigh_93_75_grams() =>
        Assert.Equal(93.75, HouseholdMeasures.OfCups(IngredientCatalog.Get("ap_flour"), 0.75)!.Value.Grams, 1e-9); // USDA SR28

    [Fact]
    public void The_error_is_shown()
    {
        // By hand: 30 g of egg are nearest to half an egg, 25 g: 25/30 - 1
        var measure = HouseholdMeasures.For(IngredientCatalog.Get("whole_egg"), Mass.FromGrams(30))!;
        Assert.Equal("1/2 large egg", measure.Text);
        Assert.Equal(-1 / 6.0, measure.Error, 1e-12);
        Assert.True(measure.IsRough);
    }

    [Fact]
    public void A_pinch_too_small_for_spoons_has_no_measure() =>
        Assert.Null(HouseholdMeasures.For(IngredientCatalog.Get("salt"), Mass.FromGrams(0.3)));

    [Fact]
    public void Cups_of_an_ingredient_without_household_weights_are_unknown() =>
        Assert.Null(HouseholdMeasures.For(IngredientCatalog.Get("greek_yogurt"), Mass.FromGrams(100)));

    [Fact]
    public void Measures_from_a_quarter_cup_up_are_within_a_sixteenth() =>
        Gen.Select(Gen.Double[0.25, 20], Doughs.AnyOf("ap_flour", "whole_milk", "sugar", "unsalted_butter", "honey", "buttermilk"))
            .Sample(
                (cups, id) =>
                {
                    var ingredient = IngredientCatalog.Get(id);
                    var measure = HouseholdMeasures.For(ingredient, HouseholdMeasures.OfCups(ingredient, cups)!.Value)!;
                    Assert.True(Math.Abs(measure.Error) <= 0.0625, $"{cups} cups: {measure}");
                }
            );
}
