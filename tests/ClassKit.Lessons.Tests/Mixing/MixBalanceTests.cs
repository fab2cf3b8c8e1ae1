using ClassKit.Baking.Cooking;
using ClassKit.Baking.Formulas;
using ClassKit.Baking.HeatBalances;
using ClassKit.Baking.Ingredients;
using ClassKit.Baking.Quantities;
using ClassKit.BenchPlans.Classes;
using ClassKit.Lessons.Authored;
using ClassKit.Lessons.Mixing;
using ClassKit.Lessons.Packs;
using ClassKit.Lessons.Tests.Packs;

namespace ClassKit.Lessons.Tests.Mixing;

public sealed class MixBalanceTests
{
    private static readonly Temperature Kitchen = Temperature.FromCelsius(22);

    private static readonly LessonFormula ColdMuffins = SampleLesson.Muffins with
    {
        Steps =
        [
            .. SampleLesson.Muffins.Steps.Select(step =>
                step with
                {
                    Work = StepWork.Usual with { Heats = [.. step.Work.Heats.Where(heat => heat.Kind == HeatKind.Melted)] },
                }
            ),
        ],
    };

    /// <summary>
    /// A master baker's reading and a hand estimate before there was any computation: muffins asked for 20 °C come to 12 °C to 13 °C.
    /// </summary>
    [Fact]
    public void Muffins_of_cold_buttermilk_are_said_to_miss_what_is_asked()
    {
        var mix = MixBalance.Of(ColdMuffins, Kitchen).Value;
        Assert.InRange(mix.Mixed.Typical.Celsius, 12, 13);
        Assert.Equal("mix-out-of-reach", mix.OutOfReach!.Code);
        Assert.Equal(["buttermilk", "whole_egg"], mix.Of(HeatKind.Cold).Select(part => part.Ingredient.Id));
        Assert.Null(MixBalance.Of(ColdMuffins with { MixTemperature = null }, Kitchen).Value.OutOfReach);
    }

    [Fact]
    public void Muffins_of_tempered_buttermilk_come_to_what_is_asked()
    {
        var mix = MixBalance.Of(SampleLesson.Muffins, Kitchen).Value;
        Assert.Equal(20, mix.Mixed.Typical.Celsius);
        Assert.Null(mix.OutOfReach);
        // Near the kitchen's temperature, as everything else but the butter is: no hot water is asked for.
        Assert.InRange(mix.Warmed[0].Temperature.Celsius, 16, 20);
    }

    private static readonly LessonFormula Choux = SampleLesson.Bread(
        "choux",
        Leavening.Steam,
        "puff",
        3,
        38,
        200,
        200,
        [
            SampleLesson.Step("Cook the paste", 5, 7) with
            {
                Work = Cooks("water", "unsalted_butter", "bread_flour"),
            },
            SampleLesson.Step("Beat in the egg", 4, 6),
            SampleLesson.Step("Bake", 30, 35, 200),
        ],
        ("bread_flour", 100),
        ("water", 170),
        ("unsalted_butter", 80),
        ("whole_egg", 180),
        ("salt", 2)
    );

    private static StepWork Cooks(params string[] ids) =>
        StepWork.Usual with
        {
            Heats = [.. ids.Select(id => new IngredientHeat(IngredientCatalog.Get(id), HeatKind.Cooked))],
        };

    /// <summary>
    /// By hand: paste of 100 flour (1.8 J/g), 156 water (4.18) and 80 butter (2.2) at 60 °C, 180 egg (3.3) at 4 °C, and a bowl of a tenth
    /// of that heat at 22 °C come to 38 °C; unheated they would come to some 15 °C. Common practice, no source: choux paste takes its last
    /// egg lukewarm.
    /// </summary>
    [Fact]
    public void A_paste_that_was_cooked_is_warm_when_the_egg_goes_in()
    {
        var mix = MixBalance.Of(Choux, Kitchen).Value;

        Assert.InRange(mix.Mixed.Typical.Celsius, 36, 40);
        Assert.Null(mix.OutOfReach);
        Assert.Equal(["bread_flour", "water", "unsalted_butter"], mix.Of(HeatKind.Cooked).Select(part => part.Ingredient.Id));
        Assert.Empty(mix.Warmed);
        Assert.InRange(
            MixBalance.Of(Choux with { Steps = [.. Choux.Steps.Skip(1)], MixTemperature = null }, Kitchen).Value.Mixed.Typical.Celsius,
            12,
            18
        );
    }

    /// <summary>
    /// 170 of water and what butter holds (16 % of 80, 13): 3 % to 15 % of 183 boil off, typically 8 %; so much more is weighed out, and so
    /// much less water is in the dough.
    /// </summary>
    [Fact]
    public void What_boils_off_is_weighed_out_and_not_in_the_dough()
    {
        Assert.InRange(Choux.BoiledOffPercent.Low, 0.03 * 180, 0.03 * 186);
        Assert.InRange(Choux.BoiledOffPercent.High, 0.15 * 180, 0.15 * 186);
        Assert.Equal(532 - Choux.BoiledOffPercent.Typical, Choux.Dried.TotalPercent, 1e-9);
        Assert.Equal(3, (Choux with { Steps = [.. Choux.Steps.Skip(1)] }).WeighedBesidesPercent, 1e-9);

        var card = ComputedPack.Build(SampleLesson.Of(Choux), SampleLesson.Class).Value.Cards[0];
        var weighed = card.Batch.Weighed.Grams;
        Assert.Equal(card.Pieces * 60, 0.97 * (weighed - card.BoilsOff.Typical.Grams), 3.0);
    }

    /// <summary>A starter that stood at 27 °C is at 27 °C, and the water beside it needs to be the less warm.</summary>
    [Fact]
    public void A_starter_comes_as_warm_as_it_was_built()
    {
        var levain = SampleLesson.Bread(
            "levain",
            Leavening.Yeast,
            "roll",
            3,
            26,
            220,
            220,
            [SampleLesson.Step("Mix", 4, 6), SampleLesson.Step("Bake", 15, 18, 220)],
            ("bread_flour", 80),
            ("water", 46)
        );
        levain = levain with
        {
            Formula = levain.Formula with
            {
                Lines = [.. levain.Formula.Lines, new(Pantry.Shipped.Called("Sourdough starter, 100 %").Single(), 40)],
            },
        };
        var built = levain with
        {
            StarterBuild = new(1, 3, 3, Temperature.FromCelsius(27), 9) { WettedWith = IngredientCatalog.Get("water") },
        };
        double Water(LessonFormula formula) => Assert.Single(MixBalance.Of(formula, Kitchen).Value.Warmed).Temperature.Celsius;

        Assert.Equal(
            27,
            MixBalance.Of(built, Kitchen).Value.Parts.Single(part => part.Ingredient.StarterOf is not null).Temperature.Celsius
        );
        Assert.True(Water(built) < Water(levain), $"{Water(built)} beside {Water(levain)}");
    }

    private static readonly LessonFormula Dough = SampleLesson.Bread(
        "dough",
        Leavening.Yeast,
        "roll",
        3,
        26,
        220,
        220,
        [SampleLesson.Step("Mix", 4, 6), SampleLesson.Step("Bake", 15, 18, 220)],
        ("ap_flour", 100.0),
        ("water", 65),
        ("salt", 2),
        ("instant_yeast", 1)
    );

    /// <summary>
    /// The rule of three for hand mixing without friction, water = 2 × dough − flour, takes half a dough's heat capacity for water's; water
    /// holds more than half (65 × 4.18 against 100 × 1.8), so that the balance asks for less extreme water, but on the same side. Common
    /// practice, no source.
    /// </summary>
    [Theory]
    [InlineData(16)]
    [InlineData(20)]
    [InlineData(24)]
    [InlineData(30)]
    public void Water_is_drawn_as_warm_as_a_dough_asks_for_without_a_word_in_its_steps(double kitchen)
    {
        var mix = MixBalance.Of(Dough, Temperature.FromCelsius(kitchen)).Value;
        var (asked, water) = (Dough.MixTemperature!.Value.Celsius, Assert.Single(mix.Warmed).Temperature.Celsius);
        var byRule = (2 * asked) - kitchen;
        Assert.Null(mix.OutOfReach);
        Assert.InRange(water, Math.Min(asked, byRule) - 1, Math.Max(asked, byRule) + 1);
        Assert.Equal(Math.Sign(asked - kitchen), Math.Sign(water - kitchen));
    }

    [Fact]
    public void Water_stays_at_the_kitchens_temperature_where_a_step_warms_something_else_or_nothing_is_asked()
    {
        var warmed = Dough with { Steps = [SampleLesson.Step("Mix", 4, 6) with { Work = SampleLesson.Warms("ap_flour") }] };
        Assert.Equal(["ap_flour"], MixBalance.Of(warmed, Kitchen).Value.Warmed.Select(part => part.Ingredient.Id));
        Assert.Empty(MixBalance.Of(Dough with { MixTemperature = null }, Kitchen).Value.Warmed);
    }

    /// <summary>
    /// In any kitchen the card either promises what is asked or says that it cannot; what it promises is within the band of its own parts,
    /// mixed by hand.
    /// </summary>
    [Fact]
    public void A_promise_is_kept_or_taken_back()
    {
        foreach (var formula in new[] { SampleLesson.Buns, SampleLesson.Popovers, SampleLesson.Muffins, ColdMuffins, Dough })
        {
            for (var celsius = -5; celsius <= 45; celsius += 5)
            {
                var mix = MixBalance.Of(formula, Temperature.FromCelsius(celsius)).Value;
                Assert.Equal(mix.OutOfReach is null, mix.Allows(formula.MixTemperature!.Value));
                var heats = mix
                    .Parts.Select(part => (Heat: part.Line.Percent * SpecificHeat.Of(part.Ingredient), part.Temperature.Celsius))
                    .ToList();
                Assert.InRange(
                    heats.Sum(part => part.Heat * part.Celsius) / heats.Sum(part => part.Heat),
                    mix.Mixed.Low.Celsius,
                    mix.Mixed.High.Celsius
                );
            }
        }
    }

    /// <summary>
    /// Butter melts at 32 °C to 35 °C (Cheung 2003): none of these batters is that warm, whatever was melted for it; where it went in cold
    /// there is nothing to set.
    /// </summary>
    [Fact]
    public void Melted_butter_in_a_cooler_mix_is_said_to_set()
    {
        Assert.All(new[] { SampleLesson.Buns, SampleLesson.Popovers, SampleLesson.Muffins }, formula =>
            Assert.True(MixBalance.Of(formula, Kitchen).Value.SetsFat)
        );
        var unmelted = ColdMuffins with { Steps = [.. ColdMuffins.Steps.Select(step => step with { Work = StepWork.Usual })] };
        Assert.False(MixBalance.Of(unmelted, Kitchen).Value.SetsFat);
    }

    /// <summary>FDA Food Code 3-501.19: 4 h out of the refrigerator; an hour of tempering counts.</summary>
    [Fact]
    public void What_is_out_of_the_refrigerator_limits_the_bench_plan()
    {
        var tempered = SampleLesson.Muffins with
        {
            Steps =
            [
                .. SampleLesson
                    .Muffins.Steps.Select(
                        (step, at) =>
                            at != 1
                                ? step
                                : step with
                                {
                                    Work = StepWork.Usual with
                                    {
                                        Heats = [new(IngredientCatalog.Get("unsalted_butter"), HeatKind.Tempered)],
                                    },
                                }
                    )
                    .Select((step, at) => at == 0 ? step with { Work = StepWork.Usual } : step),
            ],
            MixTemperature = null,
        };
        var bench = BenchClasses.Of(
            SampleLesson.Of(InOven(SampleLesson.Buns), InOven(tempered)),
            SampleLesson.Class with
            {
                KitchenTemperature = Kitchen,
            }
        );
        Assert.All(bench.Breads[0].Steps.Take(6), step => Assert.Equal(240, step.BakedWithinMinutes));
        Assert.Equal(
            [
                new StepHeat("whole milk", bench.Breads[0].Steps[0].Heats[0].To, 0) { InWarmWater = true },
                new StepHeat("unsalted butter", bench.Breads[0].Steps[0].Heats[0].To, 0) { InWarmWater = true },
            ],
            bench.Breads[0].Steps[0].Heats
        );
        Assert.Equal(180, bench.Breads[1].Steps[1].BakedWithinMinutes);
        Assert.Equal(60, Assert.Single(bench.Breads[1].Steps[1].Heats).StandsMinutes);

        static LessonFormula InOven(LessonFormula formula) =>
            formula with
            {
                Steps =
                [
                    .. formula.Steps.Select(step => step with { Way = step.Temperature is { Celsius: > 100 } ? CookingWay.Oven : null }),
                ],
            };
    }

    /// <summary>Every degree of °F that doughs are asked for comes back as it was written, in a class of either scale.</summary>
    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void What_is_asked_in_Fahrenheit_comes_back_as_written(bool countsFahrenheit)
    {
        var dough = SampleLesson.Buns with
        {
            Formula = new(
                "plain",
                "Plain dough",
                Leavening.Yeast,
                [new(IngredientCatalog.Get("bread_flour"), 100), new(IngredientCatalog.Get("water"), 62)]
            ),
        };
        foreach (var fahrenheit in Enumerable.Range(74, 12))
        {
            var asked = dough with
            {
                MixTemperature = Temperature.FromFahrenheit(fahrenheit),
                Steps = [.. dough.Steps.Select(step => step with { Work = step.Work with { Heats = [] } })],
            };
            var mix = MixBalance
                .Of(asked, Temperature.FromFahrenheit(72), MixSettings.Default with { CountsFahrenheit = countsFahrenheit })
                .Value;

            Assert.Null(mix.OutOfReach);
            Assert.Equal(fahrenheit, mix.Mixed.Typical.Fahrenheit, 9);
            var water = Assert.Single(mix.Warmed).Temperature;
            var shown = countsFahrenheit ? water.Fahrenheit : water.Celsius;
            Assert.Equal(Math.Round(shown), shown, 6);
        }
    }
}
