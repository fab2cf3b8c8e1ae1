using ClassKit.Baking.Ingredients;

namespace ClassKit.Baking.Tests.Ingredients;

public sealed class PantryTests
{
    [Theory]
    [InlineData("spelt_flour", "spelt_flour")]
    [InlineData("Spelt flour, whole grain", "spelt_flour")]
    [InlineData("wholemeal spelt flour", "spelt_flour")]
    [InlineData("milk", null)]
    [InlineData("sawdust", null)]
    public void An_ingredient_is_found_by_id_by_name_and_by_a_name_that_is_its_alone(string text, string? id) =>
        Assert.Equal(id, Pantry.Shipped.Called(text) is [var only] ? only.Id : null);

    /// <summary>
    /// Flour of 11.92 % water (USDA SR28, NDB 20081): at 100 % hydration 111.92 g of water in 200 g, at 60 % 71.92 g in 160 g. Hydration is
    /// water over flour, as bakers count it.
    /// </summary>
    [Theory]
    [InlineData("Sourdough starter, 100 %", 0.5596)]
    [InlineData("levain (60 % hydration)", 0.4495)]
    public void A_starter_holds_the_water_of_its_hydration_and_of_its_flour(string name, double share)
    {
        var starter = Assert.Single(Pantry.Shipped.Called(name));

        Assert.Equal(share, starter.WaterShare, 1e-9);
        Assert.Equal("wheat", Assert.Single(starter.Allergens).Name);
        Assert.Same(starter, Assert.Single(Pantry.Shipped.Called(name)));
    }

    [Theory]
    [InlineData("Bread flour sourdough starter, 100 %", "bread_flour")]
    [InlineData("spelt starter, 60 %", "spelt_flour")]
    [InlineData("Levain (125 % hydration)", "ap_flour")]
    public void A_starter_is_fed_with_the_flour_in_its_name(string name, string flour) =>
        Assert.Equal(flour, Assert.Single(Pantry.Shipped.Called(name)).StarterOf!.Id);

    [Theory]
    [InlineData("Butter sourdough starter, 100 %")]
    [InlineData("Teapot starter, 100 %")]
    public void Nothing_but_flour_feeds_a_starter(string name) => Assert.Empty(Pantry.Shipped.Called(name));

    [Fact]
    public void A_starter_of_rye_declares_rye() =>
        Assert.Equal("rye", Assert.Single(Assert.Single(Pantry.Shipped.Called("Rye sourdough starter, 80 %")).Allergens).Name);

    [Fact]
    public void Ones_own_stand_in_the_place_of_those_that_ship_and_behind_them()
    {
        var own = Pantry.Shipped.With([
            IngredientCatalog.Get("spelt_flour") with
            {
                WaterShare = 0.14,
            },
            IngredientCatalog.Get("salt") with
            {
                Id = "smoked_salt",
                Name = "Smoked salt",
            },
        ]);

        Assert.Equal(0.14, Assert.Single(own.Called("Spelt flour, whole grain")).WaterShare);
        Assert.Equal("smoked_salt", own.All[^1].Id);
        Assert.Equal(Pantry.Shipped.All.Count + 1, own.All.Count);
        Assert.Same(Pantry.Shipped, Pantry.Shipped.With([]));
    }
}
