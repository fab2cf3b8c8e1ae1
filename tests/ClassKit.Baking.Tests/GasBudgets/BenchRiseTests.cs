using ClassKit.Baking.GasBudgets;
using ClassKit.Baking.Quantities;

namespace ClassKit.Baking.Tests.GasBudgets;

public sealed class BenchRiseTests
{
    private static readonly Temperature Warm = Temperature.FromCelsius(28);

    [Fact]
    public void A_rise_is_counted_from_the_level_at_its_own_beginning()
    {
        var budget = Budget(Stage("First rise", 60), Stage("Shape", 5, degasses: true), Stage("Second rise", 30));

        Assert.Equal(["First rise", "Shape", "Second rise"], budget.Rises.Select(rise => rise.Stage));
        // By definition: what the dough is times its beginning, over all stages, is what it is at the oven's door.
        Assert.Equal(
            (budget.GasFreeVolume + budget.Held.OnBench.Typical) / (budget.GasFreeVolume + budget.Course[0].Held.Typical),
            budget.Rises.Aggregate(1.0, (times, rise) => times * rise.Times.Typical),
            1e-9
        );
        Assert.True(budget.Rises[0].Times.Typical > 1);
        Assert.True(budget.Rises[1].Times.Typical < 1);
    }

    /// <summary>An end of the band that is full rises no more, so it can be the lesser one.</summary>
    [Fact]
    public void The_band_is_in_order_even_where_one_end_is_full_before()
    {
        var rises = Budget(Stage("First rise", 80), Stage("Second rise", 30)).Rises;

        Assert.All(rises, rise => Assert.True(rise.Times.Low <= rise.Times.Typical && rise.Times.Typical <= rise.Times.High));
    }

    [Fact]
    public void What_nothing_ferments_has_none() =>
        Assert.Empty(
            GasBudget
                .Of(Doughs.Muffins, Mass.FromGrams(100), [Stage("Fill", 5)], Warm, Pressure.Standard, GasBudgetSettings.Default)
                .Value.Rises
        );

    private static GasBudget Budget(params BakeStage[] stages) =>
        GasBudget.Of(Doughs.Buns, Mass.FromGrams(100), stages, Warm, Pressure.Standard, GasBudgetSettings.Default).Value;

    private static BakeStage Stage(string name, double minutes, bool degasses = false) =>
        new(name, new(minutes, minutes, minutes), Warm, false, degasses);
}
