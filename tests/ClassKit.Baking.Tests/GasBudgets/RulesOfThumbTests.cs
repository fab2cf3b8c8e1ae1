using ClassKit.Baking.Formulas;
using ClassKit.Baking.GasBudgets;
using ClassKit.Baking.Quantities;
using ClassKit.Baking.Yeast;

namespace ClassKit.Baking.Tests.GasBudgets;

/// <summary>What bakers say of rising, held against the model. Common practice, no source, all of it.</summary>
public sealed class RulesOfThumbTests
{
    /// <summary>A dough with 2 % of instant yeast doubles in one to two hours at room temperature. Common practice, no source.</summary>
    /// <remarks>An hour that is said so is one to five minutes.</remarks>
    [Theory]
    [InlineData(20)]
    [InlineData(21)]
    [InlineData(22)]
    public void A_dough_with_two_per_cent_of_instant_yeast_doubles_in_one_to_two_hours(double celsius)
    {
        var budget = Bench(TwoPercent, celsius, 180);

        Assert.InRange(Doubled(budget, band => band.Typical), 55, 120);
        Assert.True(Doubled(budget, band => band.High) <= 120);
        Assert.True(Doubled(budget, band => band.Low) >= 60);
    }

    /// <summary>The same dough would double too soon if its yeast made gas from the first minute.</summary>
    [Fact]
    public void Without_a_slow_start_it_would_double_within_the_hour() =>
        Assert.True(
            Doubled(
                Bench(TwoPercent, 22, 180, GasBudgetSettings.Default with { Yeast = YeastGasModel.Default with { LagMinutes = 0 } }),
                band => band.Typical
            ) < 55
        );

    private static readonly BakersFormula TwoPercent = Doughs.Of(
        "dough",
        Leavening.Yeast,
        ("bread_flour", 100),
        ("water", 65),
        ("salt", 2),
        ("instant_yeast", 2)
    );

    private static double Doubled(GasBudget budget, Func<Band<Volume>, Volume> end) =>
        budget
            .Course.First(point => (budget.GasFreeVolume + end(point.Held)) >= (budget.GasFreeVolume + end(budget.Course[0].Held)) * 2)
            .Minute;

    /// <summary>
    /// A wet sponge mixed with water near 38 °C (100 °F) foams in about a quarter of an hour. Common practice, no source.
    /// </summary>
    [Fact]
    public void A_warm_wet_sponge_foams_in_a_quarter_of_an_hour()
    {
        var sponge = Doughs.Of("sponge", Leavening.Yeast, ("bread_flour", 100), ("water", 100), ("sugar", 5), ("instant_yeast", 4));
        var budget = Bench(sponge, 36, 30);

        Assert.True(Gained(budget, 20) > 0.1);
        Assert.True(Gained(budget, 5) < 0.02);
    }

    /// <summary>
    /// About 2.8 % of baking powder lifts a yogurt dough at once. Common practice, no source: lifts as a hand feels it, by a tenth and
    /// more.
    /// </summary>
    [Fact]
    public void Baking_powder_lifts_a_yogurt_dough_at_once()
    {
        var dough = Doughs.Of("dough", Leavening.Chemical, ("ap_flour", 100), ("plain_yogurt", 70), ("baking_powder", 2.8), ("salt", 1));
        var budget = Bench(dough, 24, 1);

        Assert.True(Volume(budget, budget.Course[^1]) > 1.1 * budget.GasFreeVolume.Millilitres);
    }

    private static GasBudget Bench(BakersFormula formula, double celsius, double minutes, GasBudgetSettings? settings = null) =>
        GasBudget
            .Of(
                formula,
                Mass.FromGrams(formula.TotalPercent),
                [new("Rise", new(minutes, minutes, minutes), Temperature.FromCelsius(celsius), false)],
                Temperature.FromCelsius(celsius),
                Pressure.Standard,
                settings ?? GasBudgetSettings.Default
            )
            .Value;

    private static double Volume(GasBudget budget, GasPoint point) => (budget.GasFreeVolume + point.Held.Typical).Millilitres;

    /// <summary>By how much of its volume as mixed it has grown after some minutes.</summary>
    private static double Gained(GasBudget budget, double minute) =>
        Volume(budget, budget.Course.First(point => point.Minute >= minute)) / Volume(budget, budget.Course[0]) - 1;
}
