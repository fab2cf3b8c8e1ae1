using ClassKit.Baking.Formulas;
using ClassKit.Baking.GasBudgets;
using ClassKit.Baking.Quantities;
using ClassKit.Baking.Steam;
using CsCheck;

namespace ClassKit.Baking.Tests.GasBudgets;

public sealed class GasBudgetTests
{
    private static readonly Temperature Room = Temperature.FromCelsius(24);

    [Fact]
    public void Baking_powder_gives_what_its_tin_promises()
    {
        // Trade minimum of 12 % available CO2 on 2.5 % of powder; volume by CODATA 2018 and, for the vapour at 68 °C (28.6 kPa), IAPWS-IF97
        var lean = Doughs.Of("scones", Leavening.Chemical, ("ap_flour", 100), ("skim_milk", 75), ("baking_powder", 2.5));
        var source = Of(lean, Mass.FromGrams(lean.TotalPercent)).Sources.Single(source => source.Kind == GasSourceKind.BakingPowder);
        Assert.Equal(0.300, source.CarbonDioxide.Low.Grams, 1e-9);
        // The water keeps a little even when hot, so the volume is up to a seventh below that of all the gas
        var all = 0.300 / 44.009 * 8.314462618 * 341.15 / (101_325 - 28_600) * 1000;
        Assert.InRange(source.AtSet.Low.Litres, 0.85 * all, all);
    }

    [Fact]
    public void Buttermilk_uses_up_as_much_soda_as_its_acid_allows()
    {
        // 95 g at 0.8 % to 0.9 % lactic acid (common practice, no source) × 93.26 / 100: 0.709 g to 0.797 g of the 0.8 g
        var budget = Of(Doughs.Muffins, Mass.FromGrams(Doughs.Muffins.TotalPercent));
        var soda = budget.Sources.Single(source => source.Kind == GasSourceKind.Soda);
        Assert.Equal(0.709 * 0.5239, soda.CarbonDioxide.Low.Grams, 0.0005);
        Assert.Equal(0.797 * 0.5239, soda.CarbonDioxide.High.Grams, 0.0005);
        Assert.Equal(0.091, budget.SodaLeft.High.Grams, 0.0005);
        Assert.Equal(0.003, budget.SodaLeft.Low.Grams, 0.0005);
    }

    [Fact]
    public void A_popover_needs_less_than_a_hundredth_of_its_water_to_treble()
    {
        // By hand: 60 g hold 60 × (11.92 + 200 × 0.8813 + 120 × 0.7615 + 12 × 0.1794 + 2 × 0.002) / 434 = 38.94 g of water;
        // 107 mL of rise at 1.674 L/g (steam table) take 0.064 g of it
        var steam = Of(Doughs.Popovers, Mass.FromGrams(60)).Steam;
        Assert.Equal(38.94, steam.Water.Grams, 0.01);
        Assert.Equal(steam.Rise.Litres / 1.674, steam.WaterToFillRise.Grams, 0.0001);
        Assert.True(steam.ShareOfWater < 0.01);
    }

    [Fact]
    public void Yeast_is_a_band_and_never_one_number()
    {
        var yeast = Of(Doughs.Buns, Mass.FromGrams(60)).Sources.Single(source => source.Kind == GasSourceKind.Yeast);
        Assert.True(yeast.SetAmount.Low < yeast.SetAmount.Typical && yeast.SetAmount.Typical < yeast.SetAmount.High);
        Assert.True(yeast.BenchAmount.Typical < yeast.SetAmount.Typical);
    }

    [Fact]
    public void Yeast_makes_no_more_gas_than_there_is_sugar()
    {
        // Gay-Lussac; flour sugars by Saunders, Ng and Kline, Cereal Chem. 49 (1972) 86: 1.7 % and up to 5.5 % of dry flour. By hand for
        // 100 g of flour with 6 g of sugar: ((5.9988 + 0.055 × 88.08) × 0.5143 + 0.017 × 88.08 × 0.4886) / 44.009 = 0.1434 mol
        BakeStage[] aWeek = [new("Forgotten", new(10_000, 10_000, 10_000), Temperature.FromCelsius(28), false)];
        var yeast = GasBudget
            .Of(Doughs.Buns, Mass.FromGrams(Doughs.Buns.TotalPercent), aWeek, Room, Pressure.Standard, GasBudgetSettings.Default)
            .Value.Sources.Single(source => source.Kind == GasSourceKind.Yeast);
        Assert.Equal(0.1434, yeast.SetAmount.High.Moles, 0.0002);
    }

    [Fact]
    public void Everything_is_in_proportion_to_the_dough() =>
        Gen.Select(Gen.Double[1, 1000], Doughs.AnyOf(Doughs.Buns, Doughs.Muffins, Doughs.Popovers))
            .Sample(
                (grams, formula) =>
                {
                    var one = Of(formula, Mass.FromGrams(1));
                    var many = Of(formula, Mass.FromGrams(grams));
                    Assert.Equal(one.AtSet.Typical.Litres * grams, many.AtSet.Typical.Litres, grams * 1e-9);
                    Assert.Equal(one.Steam.ShareOfWater, many.Steam.ShareOfWater, 1e-12);
                },
                iter: 20
            );

    [Fact]
    public void Higher_up_the_same_gas_takes_more_room()
    {
        var high = StandardAtmosphere.PressureAt(1609).Value;
        foreach (var formula in new[] { Doughs.Buns, Doughs.Muffins, Doughs.Popovers })
        {
            var up = GasBudget.Of(formula, Mass.FromGrams(60), Stages(formula), Room, high, GasBudgetSettings.Default).Value;
            var down = Of(formula, Mass.FromGrams(60));
            Assert.True(up.Expansion.Typical > down.Expansion.Typical);
            Assert.True(up.Steam.WaterToFillRise < down.Steam.WaterToFillRise);
            Assert.True(up.Steam.BoilingPoint.Celsius < down.Steam.BoilingPoint.Celsius);
        }
    }

    [Fact]
    public void The_course_never_falls_and_stops_when_the_crumb_is_set()
    {
        foreach (var formula in new[] { Doughs.Buns, Doughs.Muffins, Doughs.Popovers })
        {
            var course = Of(formula, Mass.FromGrams(60)).Course;
            foreach (var (before, after) in course.Zip(course.Skip(1)))
            {
                Assert.True(after.Minute > before.Minute);
                Assert.True(after.Gas.Typical.Litres >= before.Gas.Typical.Litres - 1e-12, $"{formula.Id} at {after.Minute} min");
                Assert.True(!before.IsSet || after.Gas == before.Gas);
            }
            Assert.True(course[^1].IsSet);
        }
    }

    [Fact]
    public void Steam_comes_late_yeast_early_and_soda_at_once()
    {
        Assert.True(ShareOnBench(Doughs.Popovers) < 0.1);
        Assert.True(ShareOnBench(Doughs.Buns) > 0.3);
        var muffins = Of(Doughs.Muffins, Mass.FromGrams(60)).Course;
        Assert.True(muffins[0].Gas.Typical.Litres > 0.1 * muffins[^1].Gas.Typical.Litres);

        static double ShareOnBench(BakersFormula formula)
        {
            var course = Of(formula, Mass.FromGrams(60)).Course;
            return course.Last(point => !point.InOven).Gas.Typical / course[^1].Gas.Typical;
        }
    }

    [Fact]
    public void A_mixed_leavening_shows_every_source()
    {
        var puffed = Doughs.Of(
            "yeasted_soda_bread",
            Leavening.Yeast,
            ("ap_flour", 100),
            ("buttermilk", 70),
            ("instant_yeast", 1),
            ("baking_soda", 0.5),
            ("salt", 2)
        );
        Assert.Equal(
            [GasSourceKind.Air, GasSourceKind.Yeast, GasSourceKind.Soda],
            Of(puffed, Mass.FromGrams(100)).Sources.Select(source => source.Kind)
        );
    }

    [Fact]
    public void Every_source_tells_how_its_gas_becomes_a_volume()
    {
        foreach (
            var source in new[] { Doughs.Buns, Doughs.Muffins, Doughs.Popovers }.SelectMany(formula =>
                Of(formula, Mass.FromGrams(60)).Sources
            )
        )
        {
            Assert.EndsWith(" mL", source.Explanation.Steps[^1].Result, StringComparison.Ordinal);
            Assert.NotEqual("", source.Explanation.Model);
        }
    }

    [Fact]
    public void Much_of_a_muffins_first_gas_is_still_in_its_water()
    {
        // 117 g of water hold 0.0007 × 117 / 18.015 = 4.5 mmol under 100 kPa at 20 °C (CRC), of the 12 mmol or so that soda and powder give
        // before the oven
        var sources = Of(Doughs.Muffins, Mass.FromGrams(Doughs.Muffins.TotalPercent))
            .Sources.Where(source => source.Kind != GasSourceKind.Air)
            .ToList();
        var made = sources.Sum(source => source.BenchAmount.Typical.Moles);
        var inBubbles =
            sources.Sum(source => source.OnBench.Typical.Litres)
            / GasCell.VolumeOf(AmountOfSubstance.FromMoles(1), Room, Pressure.Standard).Value.Litres;
        Assert.InRange(made - inBubbles, 0.002, 0.0045);
    }

    /// <summary>
    /// By definition: what is told of the bench and what is drawn of it are one gas at one temperature, also where the last proof is warmer than
    /// the dough was mixed.
    /// </summary>
    [Theory]
    [InlineData(28)]
    [InlineData(35)]
    [InlineData(5)]
    public void The_course_ends_its_bench_where_the_sources_do(double lastProof)
    {
        foreach (var formula in new[] { Doughs.Muffins, Doughs.Popovers, Doughs.Buns })
        {
            BakeStage[] stages = [.. Stages(formula).Where(stage => !stage.InOven), Bench("Proof", 40, lastProof), Oven("Bake", 19, 190)];
            var budget = GasBudget.Of(formula, Mass.FromGrams(60), stages, Room, Pressure.Standard, GasBudgetSettings.Default).Value;
            var door = budget.Course.Last(point => !point.InOven);

            Assert.Equal(lastProof, door.Dough.Celsius, 1e-9);
            Assert.Equal(budget.OnBench.Typical.Litres, door.Gas.Typical.Litres, 1e-9);
        }
    }

    [Fact]
    public void Without_flour_or_dough_there_is_no_budget()
    {
        Assert.Equal(
            "no-flour",
            GasBudget
                .Of(
                    Doughs.Of("custard", Leavening.Steam, ("whole_milk", 100)),
                    Mass.FromGrams(60),
                    [],
                    Room,
                    Pressure.Standard,
                    GasBudgetSettings.Default
                )
                .Why!.Code
        );
        Assert.Equal("no-dough", GasBudget.Of(Doughs.Buns, default, [], Room, Pressure.Standard, GasBudgetSettings.Default).Why!.Code);
    }

    [Fact]
    public void A_bench_at_the_boil_is_explained()
    {
        BakeStage[] stages = [new("Scald", new(5, 5, 5), Temperature.FromCelsius(100), false)];
        Assert.StartsWith(
            "Scald: ",
            GasBudget.Of(Doughs.Buns, Mass.FromGrams(60), stages, Room, Pressure.Standard, GasBudgetSettings.Default).Why!.Message,
            StringComparison.Ordinal
        );
    }

    private static GasBudget Of(BakersFormula formula, Mass dough) =>
        GasBudget.Of(formula, dough, Stages(formula), Room, Pressure.Standard, GasBudgetSettings.Default).Value;

    private static BakeStage[] Stages(BakersFormula formula) =>
        formula.Leavening switch
        {
            Leavening.Steam => [Bench("Rest", 30, 24), Oven("Bake hot", 20, 220), Oven("Dry", 15, 175)],
            Leavening.Yeast => [Bench("First rise", 45, 28), Bench("Second rise", 30, 28), Oven("Bake", 19, 190)],
            Leavening.Chemical or Leavening.None => [Bench("Fill", 3, 24), Oven("Bake", 17, 200)],
        };

    private static BakeStage Bench(string name, double minutes, double celsius) =>
        new(name, new(minutes, minutes, minutes), Temperature.FromCelsius(celsius), false);

    private static BakeStage Oven(string name, double minutes, double celsius) =>
        new(name, new(minutes, minutes, minutes), Temperature.FromCelsius(celsius), true);
}
