using ClassKit.Baking.Costing;
using ClassKit.Baking.Quantities;

namespace ClassKit.Baking.Tests.Costing;

public sealed class PortionFactorTests
{
    [Fact]
    public void Twice_the_portions_of_half_the_size_are_the_same_recipe()
    {
        // Kendall College, "Recipe conversions": 5 × 8 oz → 10 × 4 oz has factor 1, not 2
        Assert.Equal(1, PortionFactor.Of(5, Mass.FromOunces(8), 10, Mass.FromOunces(4)).Value, 1e-12);
    }

    [Fact]
    public void The_recipe_services_348_portions_of_3_ounces()
    {
        // Armed Forces Recipe Service, A-1: 100 portions of 4 oz to 348 of 3 oz: 3.48 × .75 = 2.61
        Assert.Equal(2.61, PortionFactor.Of(100, Mass.FromOunces(4), 348, Mass.FromOunces(3)).Value, 1e-12);
    }

    [Fact]
    public void Nothing_cannot_be_multiplied()
    {
        Assert.Equal("no-yield", PortionFactor.Of(0, Mass.FromOunces(4), 10, Mass.FromOunces(4)).Why!.Code);
        Assert.Equal("nothing-wanted", PortionFactor.Of(5, Mass.FromOunces(4), 0, Mass.FromOunces(4)).Why!.Code);
    }
}
