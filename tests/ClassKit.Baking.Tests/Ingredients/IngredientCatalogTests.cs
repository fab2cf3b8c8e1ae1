using ClassKit.Baking.Ingredients;

namespace ClassKit.Baking.Tests.Ingredients;

public sealed class IngredientCatalogTests
{
    [Theory]
    // USDA SR26, ABBREV, water in g per 100 g
    [InlineData("ap_flour", 11.92)]
    [InlineData("bread_flour", 13.36)]
    [InlineData("whole_wheat_flour", 10.74)]
    [InlineData("cake_flour", 12.51)]
    [InlineData("whole_milk", 88.13)]
    [InlineData("skim_milk", 90.84)]
    [InlineData("buttermilk", 90.13)]
    [InlineData("plain_yogurt", 87.90)]
    [InlineData("whole_egg", 76.15)]
    [InlineData("egg_white", 87.57)]
    [InlineData("egg_yolk", 52.31)]
    [InlineData("unsalted_butter", 17.94)]
    [InlineData("honey", 17.1)]
    [InlineData("brown_sugar", 1.34)]
    [InlineData("active_dry_yeast", 5.08)]
    [InlineData("fresh_yeast", 69.0)]
    // SR28, by NDB number 20066, 20064, 20061, 20022, 12023
    [InlineData("semolina", 12.67)]
    [InlineData("rye_flour", 10.97)]
    [InlineData("rice_flour", 11.89)]
    [InlineData("cornmeal", 11.18)]
    [InlineData("sesame_seeds", 4.69)]
    public void Water_is_as_in_the_usda_tables(string id, double percent) =>
        Assert.Equal(percent, IngredientCatalog.Get(id).WaterShare * 100, 1e-9);

    [Theory]
    // USDA SR28, WEIGHT
    [InlineData("ap_flour", 125)]
    [InlineData("bread_flour", 137)]
    [InlineData("whole_wheat_flour", 120)]
    [InlineData("water", 237)]
    [InlineData("whole_milk", 244)]
    [InlineData("buttermilk", 245)]
    [InlineData("unsalted_butter", 227)]
    [InlineData("sugar", 200)]
    [InlineData("brown_sugar", 220)]
    [InlineData("honey", 339)]
    public void A_cup_weighs_what_the_usda_weighed(string id, double grams) => Assert.Equal(grams, IngredientCatalog.Get(id).GramsPerCup);

    [Theory]
    // USDA SR28, WEIGHT
    [InlineData("salt", 6.0)]
    [InlineData("baking_powder", 4.6)]
    [InlineData("baking_soda", 4.6)]
    [InlineData("cream_of_tartar", 3.0)]
    [InlineData("sugar", 4.2)]
    public void A_teaspoon_weighs_what_the_usda_weighed(string id, double grams) =>
        Assert.Equal(grams, IngredientCatalog.Get(id).GramsPerTeaspoon);

    [Fact]
    public void Ids_are_unique_and_found()
    {
        Assert.Equal(IngredientCatalog.All.Count, IngredientCatalog.All.DistinctBy(ingredient => ingredient.Id).Count());
        Assert.All(IngredientCatalog.All, ingredient =>
            Assert.True(IngredientCatalog.TryFind(ingredient.Id, out var found) && ReferenceEquals(found, ingredient))
        );
        Assert.False(IngredientCatalog.TryFind("sawdust", out _));
    }

    [Fact]
    public void Shares_of_water_are_shares() =>
        Assert.All(IngredientCatalog.All, ingredient => Assert.InRange(ingredient.WaterShare, 0, 1));
}
