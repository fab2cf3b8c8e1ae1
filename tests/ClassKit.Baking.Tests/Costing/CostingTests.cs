using ClassKit.Baking.Batches;
using ClassKit.Baking.Costing;
using ClassKit.Baking.Quantities;
using ClassKit.Baking.Weighing;

namespace ClassKit.Baking.Tests.Costing;

public sealed class CostingTests
{
    [Theory]
    // college slides on yields, author and year not known, "Yield tests"
    [InlineData(38.00, 24, 1.58)]
    [InlineData(42.00, 36, 1.17)]
    public void A_case_has_a_price_per_pound(double price, double pounds, double perPound)
    {
        var unit = new PurchaseUnit("case", Mass.FromPounds(pounds), new((decimal)price));
        Assert.Equal((decimal)perPound, unit.CostOf(Mass.FromPounds(1)).Value.Rounded.Amount);
    }

    [Fact]
    public void Packs_are_bought_whole()
    {
        // By hand
        var bag = new PurchaseUnit("bag of 5 kg", Mass.FromKilograms(5), new(7.5m));
        Assert.Equal(3, bag.PacksFor(Mass.FromKilograms(10.1)).Value);
        Assert.Equal(2, bag.PacksFor(Mass.FromKilograms(10)).Value);
        Assert.Equal(0, bag.PacksFor(default).Value);
        Assert.Equal(22.5m, bag.CostOfPacks(Mass.FromKilograms(10.1)).Value.Amount);
    }

    [Fact]
    public void A_batch_costs_what_its_lines_cost()
    {
        // By hand: 1000 g of flour at 1.20/kg, 670 g of water for nothing, 20 g of salt at 0.90/kg, 10 g of yeast at 9.00/kg with a tenth
        // thrown away
        var batch = Scaling.FromFlour(Doughs.Worksheet, Mass.FromGrams(1000), Scales.Common).Value;
        var prices = new Dictionary<string, PurchaseUnit>
        {
            ["bread_flour"] = Unit(1.20m),
            ["water"] = Unit(0),
            ["salt"] = Unit(0.90m),
            ["instant_yeast"] = Unit(9.00m),
        };
        var yields = new Dictionary<string, YieldTest> { ["instant_yeast"] = YieldTest.Of(Mass.FromGrams(100), Mass.FromGrams(90)).Value };
        var cost = BatchCost.Of(batch, 4, prices, yields).Value;

        Assert.Equal(1.318m, Math.Round(cost.Total.Amount, 12, MidpointRounding.AwayFromZero));
        Assert.Equal(0.33m, cost.PerPiece.Rounded.Amount);
        Assert.Equal(0.66m, cost.PerPortion(2).Rounded.Amount);
    }

    [Fact]
    public void An_ingredient_without_a_price_is_named()
    {
        var batch = Scaling.FromFlour(Doughs.Worksheet, Mass.FromGrams(1000), Scales.Common).Value;
        Assert.Equal(
            "Bread flour has no price. Give how it is sold, even if it costs nothing.",
            BatchCost.Of(batch, 4, new Dictionary<string, PurchaseUnit>()).Why!.ToString()
        );
    }

    [Fact]
    public void Food_at_30_percent_of_the_price()
    {
        // By hand: 1.20 / 0.30 = 4.00
        Assert.Equal(4.00m, SellingPrice.For(new(1.20m), 30).Value.Amount);
        Assert.Equal(30, SellingPrice.FoodCostPercent(new(1.20m), new(4.00m)).Value, 1e-9);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(-5)]
    [InlineData(101)]
    public void A_share_that_no_price_can_have_is_explained(double percent) =>
        Assert.Equal("bad-target", SellingPrice.For(new(1), percent).Why!.Code);

    private static PurchaseUnit Unit(decimal perKilogram) => new("kg", Mass.FromKilograms(1), new(perKilogram));
}
