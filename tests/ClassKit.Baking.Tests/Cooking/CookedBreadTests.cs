using ClassKit.Baking.Cooking;
using ClassKit.Baking.Formulas;
using ClassKit.Baking.GasBudgets;
using ClassKit.Baking.Quantities;

namespace ClassKit.Baking.Tests.Cooking;

/// <summary>What each way of cooking does to mass and volume.</summary>
public sealed class CookedBreadTests
{
    private static readonly Temperature Room = Temperature.FromCelsius(26);

    /// <summary>
    /// 8 % sugar and 1 % instant yeast, ten minutes in the steamer: Rubenthaler, Huang, Pomeranz, Cereal Chem. 67 (1990) 471; water from
    /// memory.
    /// </summary>
    private static readonly BakersFormula SteamedBread = Doughs.Of(
        "steamed_bread",
        Leavening.Yeast,
        ("ap_flour", 100),
        ("water", 50),
        ("sugar", 8),
        ("instant_yeast", 1)
    );

    private static readonly BakersFormula Round = Doughs.Of(
        "round",
        Leavening.Steam,
        ("whole_wheat_flour", 100),
        ("water", 70),
        ("salt", 1)
    );

    private static readonly BakersFormula Fritter = Doughs.Of(
        "fritter",
        Leavening.Chemical,
        ("ap_flour", 100),
        ("whole_milk", 70),
        ("whole_egg", 30),
        ("baking_powder", 4)
    );

    /// <summary>
    /// Southern steamed bread about 3.0 mL/g, Guangdong 2.6 to 3.4, northern below 2.5: Huang and Miskelly, Steamed Breads, table 2.1.
    /// </summary>
    [Fact]
    public void A_steamed_bread_comes_to_as_much_as_has_been_measured_and_far_less_than_a_baked_one()
    {
        var steamed = Of(SteamedBread, Rise, Hot(CookingWay.Steamer, 10, 100)).Held.SpecificVolume;

        Assert.InRange(steamed.Typical, 2.4, 3.4);
        Assert.True(steamed.Low <= 2.5 && steamed.High >= 3.4);
        Assert.True(steamed.Typical < Of(SteamedBread, Rise, Hot(CookingWay.Oven, 15, 200)).Held.SpecificVolume.Typical);
    }

    /// <summary>
    /// Common practice, no source: a steamed bun weighs what it did, to a gram or two; a baked one of 60 g loses some 6 g.
    /// </summary>
    [Fact]
    public void A_steamed_bun_keeps_its_mass_and_a_baked_one_does_not()
    {
        var steamed = Of(SteamedBread, Rise, Hot(CookingWay.Steamer, 10, 100)).Held.Holding.MassLoss;

        Assert.InRange(0, steamed.Low, steamed.High);
        Assert.True(Math.Max(-steamed.Low, steamed.High) <= 0.035);
        Assert.True(steamed.High < Of(SteamedBread, Rise, Hot(CookingWay.Oven, 15, 200)).Held.Holding.MassLoss.Low);
    }

    /// <summary>
    /// What is steamed and then dried in an oven may lose as much as any bread from one: 9.8 % to 13 % (Baking Business, Bakers Dictionary,
    /// and common practice), for there the oven's loss counts among the others.
    /// </summary>
    [Fact]
    public void A_bread_that_an_oven_dries_after_the_steamer_may_lose_what_an_oven_takes()
    {
        var steamedOnly = Of(SteamedBread, Rise, Hot(CookingWay.Steamer, 20, 100)).Held.Holding;
        var bakedOnly = Of(SteamedBread, Rise, Hot(CookingWay.Oven, 10, 220)).Held.Holding;
        var both = Of(SteamedBread, Rise, Hot(CookingWay.Steamer, 20, 100), Hot(CookingWay.Oven, 10, 220)).Held.Holding;

        Assert.Equal(bakedOnly.BakingLoss.High, both.BakingLoss.High);
        Assert.True(both.BakingLoss.High >= 0.098);
        Assert.Equal(steamedOnly.BakingLoss.Low, both.BakingLoss.Low);
        Assert.Equal(steamedOnly.BakingLoss.Typical, both.BakingLoss.Typical);
    }

    /// <summary>
    /// Wheat doughnuts took up 26 g of oil for 100 g, soya ones 8 to 11 (soya doughnuts with a coating, a paper read at second hand): the
    /// band holds both.
    /// </summary>
    [Fact]
    public void What_is_fried_takes_up_fat_for_the_water_that_it_loses()
    {
        var holding = Of(Fritter, [], Hot(CookingWay.Fryer, 3, 180)).Held.Holding;

        Assert.InRange(0.08, holding.FatTaken.Low, holding.FatTaken.High);
        Assert.InRange(0.26, holding.FatTaken.Low, holding.FatTaken.High);
        Assert.True(holding.BakingLoss.Low > 0);
        Assert.InRange(holding.BakingLoss.Typical - holding.FatTaken.Typical, holding.MassLoss.Low, holding.MassLoss.High);
        Assert.Equal(default, Of(Fritter, [], Hot(CookingWay.Oven, 15, 200)).Held.Holding.FatTaken);
    }

    [Theory]
    [InlineData(CookingWay.Pan, false, true)]
    [InlineData(CookingWay.Griddle, false, true)]
    [InlineData(CookingWay.PizzaOven, false, true)]
    [InlineData(CookingWay.Fryer, false, true)]
    [InlineData(CookingWay.Flame, false, false)]
    [InlineData(CookingWay.Microwave, false, false)]
    [InlineData(CookingWay.Oven, true, true)]
    public void Where_nobody_knows_nothing_is_predicted(CookingWay way, bool rise, bool loss)
    {
        var holding = Of(Round, [], Hot(way, 3, 240)).Held.Holding;

        Assert.Equal((rise, loss), (holding.IsPredicted, holding.IsLossPredicted));
    }

    /// <summary>
    /// Common practice, no source: rings that are boiled for a minute gain a little, and lose it in the oven with the rest.
    /// </summary>
    [Fact]
    public void Boiling_before_baking_widens_the_loss_of_an_oven_only_if_it_takes_its_time()
    {
        var baked = Of(SteamedBread, Rise, Hot(CookingWay.Oven, 18, 220)).Held.Holding.MassLoss;

        Assert.Equal(
            baked,
            Of(SteamedBread, Rise, Hot(CookingWay.BoilingWater, 1, 100), Hot(CookingWay.Oven, 18, 220)).Held.Holding.MassLoss
        );
        var boiled = Of(SteamedBread, Rise, Hot(CookingWay.BoilingWater, 4, 100), Hot(CookingWay.Oven, 18, 220)).Held.Holding.MassLoss;
        Assert.True(boiled.Low < baked.Low && boiled.High == baked.High);
    }

    /// <summary>
    /// Steam is no hotter than boiling water, and at 2500 m that is 91.6 °C (US Standard Atmosphere 1976 and IAPWS-IF97, as in references):
    /// a bun gets no hotter either.
    /// </summary>
    [Theory]
    [InlineData(101325, 100)]
    [InlineData(74682.5, 91.64)]
    public void Nothing_gets_hotter_than_the_steam_around_it(double pascals, double boiling)
    {
        var course = Of(SteamedBread, Rise, Pressure.FromPascals(pascals), Hot(CookingWay.Steamer, 10, boiling)).Course;

        Assert.All(course, point => Assert.True(point.Dough.Celsius <= boiling + 0.05));
        Assert.True(course[^1].IsSet);
        Assert.True(course[^1].Dough.Celsius > 80);
    }

    private static BakeStage[] Rise =>
        [
            new("First rise", new(35, 40, 45), Temperature.FromCelsius(30), false),
            new("Shape", new(5, 5, 5), Temperature.FromCelsius(28), false, true),
            new("Proof", new(35, 40, 45), Temperature.FromCelsius(32), false),
        ];

    private static BakeStage Hot(CookingWay way, double minutes, double celsius) =>
        new($"{way}", new(minutes, minutes, minutes), Temperature.FromCelsius(celsius), true) { Way = way };

    private static GasBudget Of(BakersFormula formula, BakeStage[] bench, params BakeStage[] hot) =>
        Of(formula, bench, Pressure.Standard, hot);

    private static GasBudget Of(BakersFormula formula, BakeStage[] bench, Pressure pressure, params BakeStage[] hot) =>
        GasBudget.Of(formula, Mass.FromGrams(60), [.. bench, .. hot], Room, pressure, GasBudgetSettings.Default).Value;
}
