using ClassKit.PracticeBank.Tests.Bank;

namespace ClassKit.PracticeBank.Tests.Examples;

/// <summary>
/// Published worked examples of dough temperature and ice, put in as givens. The factor method is the same sum in either kind of degrees.
/// </summary>
public sealed class DoughTemperatureExamples
{
    [Theory]
    // Teaching material of a baking institute, common practice.
    [InlineData(75, 65, 65, 8, 87)]
    // Pizza Today, June 2018.
    [InlineData(80, 75, 65, 35, 65)]
    // J. E. Wihlfahrt, A Treatise on Baking: 78 °F from 85 + 67 + 82 and from 72 + 62 + 100, no friction.
    [InlineData(78, 85, 67, 0, 82)]
    [InlineData(78, 72, 62, 0, 100)]
    // common practice, no source: 8 minutes at 2 degrees each.
    [InlineData(78, 70, 60, 16, 88)]
    public void Three_factors_give_the_published_water(double want, double room, double flour, double friction, double water) =>
        Assert.Equal(
            water,
            ShippedBank.Work("water_for_the_dough", ("want", want), ("room", room), ("flour_temp", flour), ("friction", friction))["water"],
            1e-9
        );

    [Theory]
    // Water table of Koerner Co.: pounds of ice for a pound of water; the heat balance meets it to 0.0025.
    [InlineData(80, 50, 0.155)]
    [InlineData(60, 30, 0.172)]
    [InlineData(40, 20, 0.130)]
    [InlineData(32, 0, 0.222)]
    [InlineData(32, -30, 0.430)]
    [InlineData(80, 0, 0.416)]
    [InlineData(70, 50, 0.109)]
    public void Ice_in_pounds_is_that_of_a_bakery_suppliers_table(double tap, double need, double ice) =>
        Assert.Equal(ice, ShippedBank.Work("ice_in_pounds", ("water", 1), ("tap", tap), ("need", need), ("melting", 112))["ice"], 0.0025);

    [Fact]
    public void Ice_in_grams_keeps_the_heat_balance()
    {
        // 40 kg from 20 °C to 10 °C with 80 °C for the melting: a tenth is ice. Calculated; a published post with the other model says 4.4
        // kg.
        var answers = ShippedBank.Work("ice_step_by_step", ("water", 40_000), ("tap", 20), ("need", 10), ("melting", 80));

        Assert.Equal(4000, answers["ice"], 1e-9);
        Assert.Equal(36_000, answers["from_the_tap"], 1e-9);
    }

    [Fact]
    public void The_open_plan_meets_both_published_steps()
    {
        // Pizza Today's water of 65 °F, then the supplier's ice from a tap of 80 °F: (80 - 65)/(80 + 112) of the water.
        var answers = ShippedBank.Work(
            "hot_weekend",
            ("want", 80),
            ("room", 75),
            ("flour_temp", 65),
            ("friction", 35),
            ("tap", 80),
            ("water", 192),
            ("melting", 112),
            ("ice_at", 0),
            ("ice_heat", 0.5)
        );

        Assert.Equal(15, answers["ice"], 1e-9);
    }

    [Fact]
    public void A_freezer_of_eighteen_below_saves_a_twelfth_of_the_ice()
    {
        // Heat of ice 2.1 kJ/(kg K), half of water's (CRC Handbook): 80 + 9 take the place of 80, so 40 kg from 20 °C to 10 °C take 400/109
        // kg of it, by hand.
        (string, double)[] day =
        [
            ("want", 25),
            ("room", 25),
            ("flour_temp", 25),
            ("friction", 15),
            ("tap", 20),
            ("water", 40_000),
            ("melting", 80),
            ("ice_heat", 0.5),
        ];

        Assert.Equal(400_000.0 / 109, ShippedBank.Work("hot_weekend", [.. day, ("ice_at", -18)])["ice"], 1e-6);
        Assert.Equal(4000, ShippedBank.Work("hot_weekend", [.. day, ("ice_at", 0)])["ice"], 1e-6);
    }

    [Fact]
    public void A_preferment_makes_four_factors()
    {
        // The same teaching material: times four with a preferment. Its three-factor figures with a preferment at the dough's own
        // temperature change nothing.
        var answers = ShippedBank.Work(
            "four_factors",
            ("dough_before", 75),
            ("room_before", 65),
            ("flour_before", 65),
            ("poolish_before", 75),
            ("water_before", 87),
            ("want", 75),
            ("room", 65),
            ("flour_temp", 65),
            ("poolish", 75)
        );

        Assert.Equal(8, answers["friction"], 1e-9);
        Assert.Equal(87, answers["water"], 1e-9);
    }
}
