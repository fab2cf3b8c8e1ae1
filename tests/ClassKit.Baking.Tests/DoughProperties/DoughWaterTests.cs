using ClassKit.Baking.Formulas;
using ClassKit.Baking.Ingredients;

namespace ClassKit.Baking.Tests.DoughProperties;

public sealed class DoughWaterTests
{
    [Fact]
    public void Yogurt_wets_flour_with_its_water_only()
    {
        // USDA SR26: 500 g of AP flour (11.92 % water) and 300 g of plain whole yogurt (87.90 %)
        var formula = Doughs.Of("flatbread", Leavening.Chemical, ("ap_flour", 100), ("plain_yogurt", 60));
        Assert.Equal(60, DoughWater.AddedLiquidPercent(formula), 1e-9);
        Assert.Equal(52.74, DoughWater.EffectivePercent(formula), 0.005);
        Assert.Equal(0.4041, DoughWater.MoistureShare(formula), 0.00005);
    }

    [Fact]
    public void Greek_yogurt_wets_it_less()
    {
        // USDA SR26: 100 g of AP flour and 100 g of nonfat Greek yogurt (85.10 %)
        var formula = Doughs.Of("two_ingredient", Leavening.Chemical, ("ap_flour", 100), ("greek_yogurt", 100));
        Assert.Equal(85.10, DoughWater.EffectivePercent(formula), 0.005);
        Assert.Equal(0.4851, DoughWater.MoistureShare(formula), 0.00005);
    }

    [Theory]
    // USDA SR26 composition × SR28 household weights
    [InlineData("whole_egg", 50, 38.08)]
    [InlineData("unsalted_butter", 113, 20.27)]
    [InlineData("whole_milk", 244, 215.04)]
    public void Water_in_an_egg_a_stick_and_a_cup(string id, double grams, double water) =>
        Assert.Equal(water, grams * IngredientCatalog.Get(id).WaterShare, 0.006);

    [Fact]
    public void Nothing_holds_no_water() => Assert.Equal(0, DoughWater.MoistureShare(Doughs.Of("nothing", Leavening.Steam)));
}
