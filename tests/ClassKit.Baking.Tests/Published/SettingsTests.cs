using ClassKit.Baking.Altitude;
using ClassKit.Baking.Batches;
using ClassKit.Baking.Chemistry;
using ClassKit.Baking.DoughTemperatures;
using ClassKit.Baking.FoodSafety;
using ClassKit.Baking.GasBudgets;
using ClassKit.Baking.Household;
using ClassKit.Baking.Ingredients;
using ClassKit.Baking.Quantities;
using ClassKit.Baking.Steam;
using ClassKit.Baking.Yeast;

namespace ClassKit.Baking.Tests.Published;

/// <summary>
/// Where sources disagree, the convention is a named setting: the default first, each with a source, and the results differ as the sources
/// do.
/// </summary>
public sealed class SettingsTests
{
    [Fact]
    public void Yeast_factors_differ_between_cook_books_laboratory_and_old_packets()
    {
        // 100 g of fresh: × 0.4 (cook books), 30/92 (AACC 89-01.01), 1/3 (BC Cook), 3/8 (older packets)
        var dry = YeastFactors.All.Select(factors =>
            Math.Round(
                factors.Convert(Mass.FromGrams(100), YeastKind.Fresh, YeastKind.ActiveDry).Value.Grams,
                2,
                MidpointRounding.AwayFromZero
            )
        );
        Assert.Equal([40, 32.61, 33.33, 37.5], dry);
    }

    [Fact]
    public void Cups_and_ounces_differ_between_kitchen_label_metric_and_imperial()
    {
        // NIST SP 811; 21 CFR 101.9(b)(5)(viii); half of 500 mL; 4.54609 L / 16
        Assert.Equal(
            [236.588, 240, 250, 284.131],
            MeasureDefinition.All.Select(measures => Math.Round(measures.Cup.Millilitres, 3, MidpointRounding.AwayFromZero))
        );
        Assert.Equal(
            [28.35, 28, 28.35, 28.35],
            MeasureDefinition.All.Select(measures => Math.Round(measures.Ounce.Grams, 2, MidpointRounding.AwayFromZero))
        );
    }

    [Fact]
    public void A_cup_of_flour_weighs_113_to_142_grams()
    {
        // USDA SR28: 125 g; trade lists: 5 oz and 1/4 lb
        var flour = IngredientCatalog.Get("ap_flour");
        Assert.Equal(
            [125, 141.7, 113.4],
            FlourCup.All.Select(cup =>
                Math.Round(HouseholdMeasures.OfCups(cup.Applied(flour), 1)!.Value.Grams, 1, MidpointRounding.AwayFromZero)
            )
        );
        Assert.Equal("1 cup", HouseholdMeasures.For(FlourCup.FiveOunces.Applied(flour), Mass.FromGrams(142))!.Text);
        Assert.Same(IngredientCatalog.Get("salt"), FlourCup.FiveOunces.Applied(IngredientCatalog.Get("salt")));
    }

    [Fact]
    public void Ice_is_counted_in_three_ways()
    {
        // 30 kg from 18 °C to 13 °C: closed balance 30 × 5 / 98, melting only 30 × 5 / 80 (common practice, no source), added 30 × 5 / 93
        var ice = Enum.GetValues<IceModel>()
            .Select(model =>
                Math.Round(
                    Ice.For(Mass.FromKilograms(30), Temperature.FromCelsius(18), Temperature.FromCelsius(13), model).Value.Ice.Kilograms,
                    3,
                    MidpointRounding.AwayFromZero
                )
            );
        Assert.Equal([1.531, 1.875, 1.613], ice);
        Assert.Equal(default, IceModel.Replacing);
    }

    [Fact]
    public void Losses_are_added_or_compounded()
    {
        // bakery schools' sum, common practice, no source: 574.71 lb; compounded 573.26 lb
        Assert.Equal(
            [574.71, 573.26],
            Enum.GetValues<LossRule>()
                .Select(rule =>
                    Math.Round(new DoughLoss([2, 11], rule).DoughFor(Mass.FromPounds(500)).Value.Pounds, 2, MidpointRounding.AwayFromZero)
                )
        );
    }

    [Fact]
    public void Altitude_is_geometric_or_geopotential()
    {
        // US Standard Atmosphere 1976 at 3000 m: 70 121 Pa and 70 108.5 Pa
        Assert.Equal(
            [70_121, 70_109],
            Enum.GetValues<AltitudeKind>()
                .Select(kind => Math.Round(StandardAtmosphere.PressureAt(3000, kind).Value.Pascals, MidpointRounding.AwayFromZero))
        );
    }

    [Fact]
    public void Altitude_tables_disagree()
    {
        // At 7000 ft powder loses a quarter (extension) or a quarter to a half (the other table, common practice)
        Assert.Equal(
            [2.5 * 0.75, 2.5 * 0.625],
            AltitudeTable.All.Select(table =>
                AltitudeFormula
                    .For(Doughs.Muffins, 7000 * 0.3048, table, 0.5)
                    .Value.Lines.Single(line => line.Ingredient.Id == "baking_powder")
                    .Chosen
            )
        );
    }

    [Fact]
    public void Hot_food_is_kept_at_135_or_140_F() =>
        Assert.Equal([135, 140], HoldingRule.All.Select(rule => Math.Round(rule.Hot.Fahrenheit, 6, MidpointRounding.AwayFromZero))); // FDA Food Code; New York City Health Code

    [Fact]
    public void Yeast_answers_to_a_degree_by_7_6_or_by_10_percent()
    {
        // Sosland Publishing, Bake, "The science of fermentation": 10 % a degree; bakers' rule, common practice: a doubling in 17 °F
        Assert.Equal(
            [1.076, 1.10],
            new[] { YeastGasModel.Default.GrowthPerDegree.Low, YeastGasModel.Default.GrowthPerDegree.High }.Select(growth =>
                Math.Round(growth, 3, MidpointRounding.AwayFromZero)
            )
        );
    }

    [Fact]
    public void Powder_acts_once_or_twice()
    {
        // common practice, no source: double-acting waits for the oven with most of its gas, single-acting does not
        var bench = PowderRelease.All.Select(release => release.ShareAt(Temperature.FromCelsius(24)).Value.Typical).ToList();
        Assert.True(bench[0] < 0.5 && bench[1] > 0.5);
        Assert.All(PowderRelease.All, release => Assert.Equal(1, release.ShareAt(Temperature.FromCelsius(80)).Value.Low, 1e-12));
        var single = GasBudgetSettings.Default with { PowderBenchShare = PowderRelease.SingleActing.BenchShare };
        Assert.True(Bench(single) > 2 * Bench(GasBudgetSettings.Default));

        static double Bench(GasBudgetSettings settings) =>
            GasBudget
                .Of(Doughs.Muffins, Mass.FromGrams(100), [], Temperature.FromCelsius(24), Pressure.Standard, settings)
                .Value.Sources.Single(source => source.Kind == GasSourceKind.BakingPowder)
                .BenchAmount.Typical.Moles;
    }

    [Theory]
    [InlineData("sapp", 72)]
    [InlineData("own", 70)]
    public void An_acid_of_another_value_can_be_named(string id, double value) =>
        Assert.Equal(100 / value, new LeaveningAcid(id, "SAPP", value, "a maker's sheet").For(Mass.FromGrams(1)).Value.Grams, 1e-12); // AACC 02-32: 100 × soda / value

    [Fact]
    public void Every_setting_names_its_source()
    {
        Assert.All(YeastFactors.All, setting => Assert.NotEqual("", setting.Source));
        Assert.All(MeasureDefinition.All, setting => Assert.NotEqual("", setting.Source));
        Assert.All(FlourCup.All, setting => Assert.NotEqual("", setting.Source));
        Assert.All(AltitudeTable.All, setting => Assert.NotEqual("", setting.Source));
        Assert.All(HoldingRule.All, setting => Assert.NotEqual("", setting.Source));
        Assert.All(PowderRelease.All, setting => Assert.NotEqual("", setting.Source));
        Assert.All(LeaveningAcid.All, acid => Assert.NotEqual("", acid.Source));
        Assert.All(IngredientCatalog.All, ingredient => Assert.NotEqual("", ingredient.Source));
        Assert.All(PublishedVolume.All, volume => Assert.NotEqual("", volume.Source));
    }
}
