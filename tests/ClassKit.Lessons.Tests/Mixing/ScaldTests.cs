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

    /// <summary>
    /// By hand: 20 g of the water boil and 30 g are drawn. At 22 °C flour (1.6 to 2.0 J/(g K), from memory) and drawn water they hold 285 to
    /// 325 J/K, the boiling part 84 J/K: 36 °C to 40 °C together, and a bowl takes a degree or two.
    /// </summary>
    [Fact]
    public void Only_the_part_that_boils_is_hot()
    {
        var mix = MixBalance.Of(Dough([Heating(new IngredientHeat(Water, HeatKind.Boiled) { Share = 0.4 }), Steps[1]]), Kitchen).Value;

        Assert.InRange(mix.Mixed.Typical.Celsius, 34, 40);
        Assert.Equal(20, Assert.Single(mix.Of(HeatKind.Boiled)).Line.Percent, 9);
        Assert.Equal([60.0, 100], mix.Parts.Where(part => part.Kind == HeatKind.AsStored).Select(part => part.Share * 100).Order());
    }

    [Fact]
    public void The_rest_of_the_water_is_drawn_for_what_is_asked()
    {
        var dough = Dough([Heating(new IngredientHeat(Water, HeatKind.Boiled) { Share = 0.2 }), Stand, Steps[1]]) with
        {
            MixTemperature = Temperature.FromCelsius(26),
        };
        var mix = MixBalance.Of(dough, Kitchen).Value;

        Assert.Null(mix.OutOfReach);
        Assert.Equal(40, Assert.Single(mix.Warmed).Line.Percent, 9);
        Assert.True(mix.Warmed[0].IsRest);
        Assert.True(mix.Warmed[0].Temperature.Celsius > 26);
    }

    /// <summary>A roux of milk and flour: some of the milk is cooked, and the rest of it is warmed.</summary>
    [Fact]
    public void Of_one_liquid_a_part_is_cooked_and_the_rest_warmed()
    {
        var dough = Dough([
            Heating(
                new IngredientHeat(Water, HeatKind.Cooked) { Share = 0.5 },
                new(IngredientCatalog.Get("bread_flour"), HeatKind.Cooked) { Share = 0.1 },
                new(Water, HeatKind.Warmed)
            ),
            Stand,
            Steps[1],
        ]) with
        {
            MixTemperature = Temperature.FromCelsius(27),
        };
        var mix = MixBalance.Of(dough, Kitchen).Value;

        Assert.Null(mix.OutOfReach);
        Assert.Empty(mix.Of(HeatKind.Cooked));
        Assert.Single(mix.Warmed);
        // Half of its 50 g are in the pan: 3 to 15 % of those boil off, from memory.
        Assert.Equal((25 * 0.03, 25 * 0.15), (Math.Round(dough.BoiledOffPercent.Low, 9), Math.Round(dough.BoiledOffPercent.High, 9)));
    }

    private static MethodStep Heating(params IReadOnlyList<IngredientHeat> heats) =>
        Steps[0] with
        {
            Work = StepWork.Usual with { Heats = heats },
        };

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
