using ClassKit.Baking.Formulas;
using ClassKit.Baking.Ingredients;
using ClassKit.Baking.Quantities;
using ClassKit.Lessons.Authored;
using ClassKit.Lessons.Cautions;
using ClassKit.Lessons.Mixing;
using ClassKit.Lessons.Tests.Packs;

namespace ClassKit.Lessons.Tests.Mixing;

/// <summary>
/// Boiling water over flour. By hand: 100 g of flour at 22 °C with 1.6 to 2.0 J/(g K), from memory, and 50 g of water with 4.18 J/(g K) come
/// to 62 °C to 66 °C, and to some 3 or 4 °C less in a bowl with a tenth of their heat.
/// </summary>
public sealed class ScaldTests
{
    private static readonly Temperature Kitchen = Temperature.FromCelsius(22);

    private static readonly MethodStep[] Steps =
    [
        SampleLesson.Muffins.Steps[0] with
        {
            Name = "Scald",
            Work = StepWork.Usual with { Heats = [new(Water, HeatKind.Boiled)] },
        },
        SampleLesson.Muffins.Steps[0] with
        {
            Name = "Mix",
            Work = StepWork.Usual,
        },
    ];

    private static readonly MethodStep Stand = Steps[1] with { Name = "Stand", Work = StepWork.Usual with { People = 0 } };

    private static Ingredient Water => IngredientCatalog.Get("water");

    [Fact]
    public void The_mix_is_as_warm_as_boiling_water_makes_it()
    {
        var mix = MixBalance.Of(Dough(Steps), Kitchen).Value;

        Assert.InRange(mix.Mixed.Typical.Celsius, 57, 66);
        Assert.Equal(100, Assert.Single(mix.Of(HeatKind.Boiled)).Temperature.Celsius);
    }

    [Fact]
    public void Higher_up_water_boils_cooler()
    {
        var high = MixBalance.Of(Dough(Steps), Kitchen, MixSettings.Default with { Boiling = Temperature.FromCelsius(93) }).Value;

        Assert.True(high.Mixed.Typical.Celsius < MixBalance.Of(Dough(Steps), Kitchen).Value.Mixed.Typical.Celsius);
    }

    [Fact]
    public void A_scald_that_stood_is_as_cool_as_the_kitchen()
    {
        var mix = MixBalance.Of(Dough([Steps[0], Stand, Steps[1]]), Kitchen).Value;

        Assert.Empty(mix.Of(HeatKind.Boiled));
        Assert.Equal(Kitchen.Celsius, mix.Mixed.Typical.Celsius);
        // What rests once all is mixed has not cooled the scald before that.
        Assert.NotEmpty(MixBalance.Of(Dough([.. Steps, Stand]), Kitchen).Value.Of(HeatKind.Boiled));
    }

    [Fact]
    public void Water_that_is_poured_boiling_is_not_drawn_at_another_temperature()
    {
        Assert.False(TapWater.IsDrawnFor(Dough(Steps) with { MixTemperature = Temperature.FromCelsius(26) }));
        Assert.True(TapWater.IsDrawnFor(Dough([Steps[0], Stand, Steps[1]]) with { MixTemperature = Temperature.FromCelsius(26) }));
    }

    [Fact]
    public void Whoever_pours_is_told_of_it() => Assert.Contains(Hazard.Scald, StandingCautions.In(Dough(Steps)));

    private static LessonFormula Dough(IReadOnlyList<MethodStep> steps) =>
        SampleLesson.Muffins with
        {
            Formula = new BakersFormula(
                "scalded",
                "Scalded dough",
                Leavening.None,
                [new(IngredientCatalog.Get("bread_flour"), 100), new(Water, 50)]
            ),
            MixTemperature = null,
            Steps = [.. steps, .. SampleLesson.Muffins.Steps.Where(step => step.IsCooking)],
        };
}
