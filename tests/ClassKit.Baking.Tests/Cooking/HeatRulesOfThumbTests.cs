using ClassKit.Baking.Cooking;
using ClassKit.Baking.Formulas;
using ClassKit.Baking.GasBudgets;
using ClassKit.Baking.HeatBalances;
using ClassKit.Baking.Quantities;

namespace ClassKit.Baking.Tests.Cooking;

/// <summary>
/// What practitioners say of minutes in the heat, held against what the models say of mass lost and heat taken up: the heat that warms a
/// round to boiling and drives its water off has to come through its faces in the time that is told. Common practice, no source, all of it;
/// that a dry dough takes 50 to 150 W/(m² K) from a hot plate and 80 to 800 from hot fat: from memory.
/// </summary>
public sealed class HeatRulesOfThumbTests
{
    /// <summary>The dough on its way from the bench to boiling, on the mean.</summary>
    private const double OnTheWay = 80;

    private static readonly BakersFormula Round = Doughs.Of(
        "round",
        Leavening.Steam,
        ("whole_wheat_flour", 100),
        ("water", 70),
        ("salt", 1.5)
    );

    private static readonly BakersFormula YeastRound = Doughs.Of(
        "yeast_round",
        Leavening.Yeast,
        ("bread_flour", 100),
        ("water", 65),
        ("salt", 2),
        ("instant_yeast", 1)
    );

    /// <summary>
    /// A thin unleavened round on a pan near 245 °C (475 °F) takes about a minute on the first side and 15 to 30 s on the second: 45 g, 15
    /// cm across.
    /// </summary>
    [Fact]
    public void A_thin_round_gets_its_heat_from_a_pan_in_a_minute_and_a_quarter_to_a_half() =>
        Assert.InRange(Coefficient(Round, 45, 15, CookingLoss.OnHotPlate, 82, 245), 50, 150);

    /// <summary>
    /// A thin yeast round on a stone that was heated for an hour at 260 °C (500 °F) takes about a minute and a half a side: 80 g, 15 cm
    /// across.
    /// </summary>
    [Fact]
    public void A_yeast_round_gets_its_heat_from_a_stone_in_a_minute_and_a_half_a_side() =>
        Assert.InRange(Coefficient(YeastRound, 80, 15, CookingLoss.InPizzaOven, 180, 260), 50, 150);

    /// <summary>At 350 °C (660 °F) it takes about a minute: the same heat from what is hotter.</summary>
    [Fact]
    public void A_hotter_stone_takes_about_a_minute()
    {
        // The coefficient that a minute and a half at 260 °C asks for, and the time in which it brings as much at 350 °C.
        var at260 = Coefficient(YeastRound, 80, 15, CookingLoss.InPizzaOven, 90, 260);
        var inASecondAt350 = Coefficient(YeastRound, 80, 15, CookingLoss.InPizzaOven, 1, 350);

        Assert.InRange(inASecondAt350 / at260, 50, 75);
    }

    /// <summary>
    /// Fried rounds take a minute and then half to one minute, with both faces in the fat: 80 g, 15 cm across, at 180 °C.
    /// </summary>
    [Fact]
    public void A_fried_round_gets_its_heat_in_a_minute_and_a_half_to_two() =>
        Assert.InRange(Coefficient(YeastRound, 80, 15, CookingLoss.Fried, 105, 180) / 2, 80, 800);

    /// <summary>Over a flame it puffs in seconds, which take nothing worth weighing: the loss is the pan's.</summary>
    [Fact]
    public void Seconds_over_a_flame_cost_no_mass()
    {
        var pan = Hot(CookingWay.Pan, 1.5, 245);

        Assert.Equal(Loss(pan), Loss(pan, Hot(CookingWay.Flame, 0.1, 245)));
        Assert.False(Holding(pan, Hot(CookingWay.Flame, 5, 245)).IsLossPredicted);
    }

    /// <summary>A plain whole-wheat dough of this kind holds about 70 % water and is kneaded; one that is stirred is wetter.</summary>
    [Fact]
    public void A_whole_wheat_dough_of_seventy_per_cent_is_kneaded()
    {
        Assert.Equal(GasHolding.KneadedDough, GasHolding.For(WholeWheat(70)));
        Assert.Equal(GasHolding.SoftDough, GasHolding.For(WholeWheat(80)));
    }

    private static BakersFormula WholeWheat(double water) =>
        Doughs.Of("whole_wheat", Leavening.Yeast, ("whole_wheat_flour", 100), ("water", water), ("instant_yeast", 1));

    /// <summary>
    /// In W/(m² K), by one face: heat to boiling and of the water that leaves (2257 J/g, steam tables), over face, time and what the plate
    /// is hotter.
    /// </summary>
    private static double Coefficient(
        BakersFormula formula,
        double grams,
        double centimetres,
        CookingLoss loss,
        double seconds,
        double celsius
    )
    {
        var perGram =
            formula.Lines.Sum(line => line.Percent * SpecificHeat.Of(line.Ingredient)) / formula.TotalPercent * (100 - 24)
            + loss.Water.Typical * 2257;
        var squareMetres = Math.PI / 4 * Math.Pow(centimetres / 100, 2);
        return grams * perGram / (squareMetres * seconds * (celsius - OnTheWay));
    }

    private static Band<double> Loss(params BakeStage[] hot) => Holding(hot).MassLoss;

    private static GasHolding Holding(params BakeStage[] hot) =>
        GasBudget
            .Of(Round, Mass.FromGrams(45), hot, Temperature.FromCelsius(24), Pressure.Standard, GasBudgetSettings.Default)
            .Value.Held.Holding;

    private static BakeStage Hot(CookingWay way, double minutes, double celsius) =>
        new($"{way}", new(minutes, minutes, minutes), Temperature.FromCelsius(celsius), true) { Way = way };
}
