using ClassKit.Baking.Costing;
using ClassKit.Baking.Quantities;
using CsCheck;

namespace ClassKit.Baking.Tests.Costing;

public sealed class YieldTestTests
{
    [Fact]
    public void A_trade_course_buys_5_2_kg_and_uses_4_6()
    {
        // G. Wall, Trade Calculations, objective 4 (2007): 88.5 %; $11.95/kg → $13.51 from the weights; 85 × 170 g = 14.45 kg → 16.33 kg
        var test = YieldTest.Of(Mass.FromKilograms(5.2), Mass.FromKilograms(4.6)).Value;
        Assert.Equal(0.884615, test.Share, 0.0000005);
        Assert.Equal(13.51m, test.EdiblePortionPrice(new(11.95m)).Value.Rounded.Amount);
        Assert.Equal(16.33, test.ToBuy(Mass.FromKilograms(14.45)).Value.Kilograms, 0.005);
    }

    [Fact]
    public void The_same_course_gets_a_cent_less_from_the_rounded_percentage() =>
        Assert.Equal(13.50m, new Money(11.95m / 0.885m).Rounded.Amount); // G. Wall: "$13.50" carried from 88.5 %

    [Fact]
    public void Tenderloin_yields_seven_tenths()
    {
        // BC Cook Articulation Committee, "Yield Testing", example 12: 2.5 kg as purchased; trim of 750 g from memory
        Assert.Equal(0.70, YieldTest.FromTrim(Mass.FromKilograms(2.5), Mass.FromGrams(750)).Value.Share, 1e-12);
    }

    [Fact]
    public void Carrots_yield_eight_tenths() =>
        Assert.Equal(0.8, YieldTest.Of(Mass.FromKilograms(1), Mass.FromGrams(800)).Value.Share, 1e-12); // the same chapter

    [Fact]
    public void Two_pounds_of_sliced_onion_cost_54_cents_and_not_48()
    {
        // johnnyskitchen.us, "Yield cost analysis": 2.25 lb as purchased at $.24
        var test = YieldTest.Of(Mass.FromPounds(2.25), Mass.FromPounds(2)).Value;
        Assert.Equal(0.54m, (test.EdiblePortionPrice(new(0.24m)).Value * 2).Rounded.Amount);
    }

    [Fact]
    public void What_is_bought_for_a_use_leaves_that_use() =>
        Gen.Select(Gen.Double[0.1, 100], Gen.Double[0.05, 1.5], Gen.Double[0.1, 100])
            .Sample(
                (bought, share, wanted) =>
                {
                    var test = YieldTest.Of(Mass.FromKilograms(bought), Mass.FromKilograms(bought * share)).Value;
                    Assert.Equal(wanted, test.ToBuy(Mass.FromKilograms(wanted)).Value.Kilograms * test.Share, wanted * 1e-12);
                }
            );

    [Fact]
    public void Trimming_everything_away_is_explained()
    {
        Assert.Equal("nothing-left", YieldTest.FromTrim(Mass.FromKilograms(1), Mass.FromKilograms(1)).Why!.Code);
        Assert.Equal("nothing-bought", YieldTest.Of(default, Mass.FromKilograms(1)).Why!.Code);
        Assert.Equal("negative-trim", YieldTest.FromTrim(Mass.FromKilograms(1), Mass.FromGrams(-1)).Why!.Code);
    }
}
