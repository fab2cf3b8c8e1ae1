using ClassKit.Baking.Formulas;
using ClassKit.Baking.Ingredients;
using ClassKit.Baking.Preferments;
using ClassKit.Baking.Quantities;
using CsCheck;

namespace ClassKit.Baking.Tests.Preferments;

public sealed class FormulaSheetTests
{
    /// <summary>Sosland Publishing, Bake, "French bread with poolish": 10 kg of flour, 67 %, 2 %, 1.1 %.</summary>
    private static readonly BakersFormula FrenchBread = Doughs.Of(
        "french_bread",
        Leavening.Yeast,
        ("bread_flour", 100),
        ("water", 67),
        ("salt", 2),
        ("fresh_yeast", 1.1)
    );

    private static SubMix Poolish(double flourPercent) =>
        SubMix.FromOwnPercentages(
            "Poolish",
            flourPercent,
            Doughs.Of("poolish", Leavening.Yeast, ("bread_flour", 100), ("water", 100), ("fresh_yeast", 0.007 / 3.3 * 100)).Lines
        );

    [Fact]
    public void A_trade_magazines_french_bread_with_poolish()
    {
        // Sosland Publishing, Bake, "French bread with poolish": poolish 3.300 + 3.300 + 0.007; final dough flour 6.700, water 3.400, salt
        // 0.200, yeast 0.103, poolish 6.607; 17.010 kg in all
        var sheet = FormulaSheet.For(FrenchBread, [Poolish(33)], Mass.FromKilograms(10)).Value;

        Assert.Equal(
            [6.700, 3.400, 0.200, 0.103],
            sheet.Rows.Select(row => Math.Round(row.Final.Kilograms, 6, MidpointRounding.AwayFromZero))
        );
        Assert.Equal(6.607, sheet.SubMixMasses[0].Kilograms, 1e-9);
        Assert.Equal(17.010, sheet.Dough.Kilograms, 1e-9);
        Assert.Equal(33, sheet.PrefermentedFlourPercent, 1e-9);
    }

    [Fact]
    public void The_page_misprints_the_poolishs_yeast_as_20_percent()
    {
        // The same page prints "20" and a total of "220" for the poolish; by its own masses it is 0.2 and 200.2
        var own = Poolish(33).OwnPercentages;
        Assert.Equal(0.2, own[^1].Percent, 0.05);
        Assert.Equal(200.2, own.Sum(line => line.Percent), 0.05);
    }

    [Fact]
    public void A_tutorials_final_dough_has_an_overall_formula()
    {
        // a tutorial's sum, common practice: poolish 468 + 468 + 0.3, final dough 900 + 468 + 9 + 27: 1368 g of flour, hydration 68.42 %,
        // salt 1.974 %, yeast 0.680 %
        var overall = FormulaSheet
            .Overall(
                "tutorial",
                "Tutorial",
                Leavening.Yeast,
                [Of("bread_flour", 900), Of("water", 468), Of("instant_yeast", 9), Of("salt", 27)],
                [Of("bread_flour", 468), Of("water", 468), Of("instant_yeast", 0.3)]
            )
            .Value;

        Assert.Equal(68.42, DoughWater.AddedLiquidPercent(overall), 0.005);
        Assert.Equal([100, 68.42, 0.680, 1.974], overall.Lines.Select(line => line.Percent), (expected, actual) =>
            Math.Abs(expected - actual) < 0.005
        );
        var poolish = new SubMix(
            "Poolish",
            Doughs.Of("p", Leavening.Yeast, ("bread_flour", 468 / 13.68), ("water", 468 / 13.68), ("instant_yeast", 0.3 / 13.68)).Lines
        );
        var sheet = FormulaSheet.For(overall, [poolish], Mass.FromGrams(1368)).Value;
        Assert.Equal(34.21, sheet.PrefermentedFlourPercent, 0.005);
        Assert.Equal([100, 52, 1, 3], sheet.Rows.Select(row => row.FinalPercent!.Value), (expected, actual) =>
            Math.Abs(expected - actual) < 1e-9
        );
    }

    [Fact]
    public void A_soaker_has_no_flour_of_its_own()
    {
        var soaker = new SubMix("Soaker", Doughs.Of("s", Leavening.Yeast, ("water", 20)).Lines);
        var sheet = FormulaSheet.For(FrenchBread, [soaker, Poolish(20)], Mass.FromKilograms(1)).Value;
        Assert.Empty(soaker.OwnPercentages);
        Assert.Equal(
            [200, 200],
            sheet
                .Rows.Single(row => row.Ingredient.Id == "water")
                .InSubMixes.Select(mass => Math.Round(mass.Grams, 9, MidpointRounding.AwayFromZero))
        );
    }

    [Fact]
    public void Old_dough_levain_and_soaker_share_one_dough()
    {
        // By hand, on 1000 g of flour: old dough 100 + 65 + 2 + 1, levain 80 + 60, soaker 50 g of water; left are 820 of flour, 495 of
        // water, 18 of salt, 9 of yeast
        var total = Doughs.Of(
            "pain",
            Leavening.Yeast,
            ("bread_flour", 90),
            ("whole_wheat_flour", 10),
            ("water", 67),
            ("salt", 2),
            ("fresh_yeast", 1)
        );
        SubMix[] ahead =
        [
            new(
                "Old dough",
                Doughs.Of("o", Leavening.Yeast, ("bread_flour", 10), ("water", 6.5), ("salt", 0.2), ("fresh_yeast", 0.1)).Lines
            ),
            new("Levain", Doughs.Of("l", Leavening.Yeast, ("whole_wheat_flour", 8), ("water", 6)).Lines),
            new("Soaker", Doughs.Of("s", Leavening.Yeast, ("water", 5)).Lines),
        ];
        var sheet = FormulaSheet.For(total, ahead, Mass.FromGrams(1000)).Value;
        Assert.Equal([800, 20, 495, 18, 9], sheet.Rows.Select(row => Math.Round(row.Final.Grams, 6, MidpointRounding.AwayFromZero)));
        Assert.Equal([168, 140, 50], sheet.SubMixMasses.Select(mass => Math.Round(mass.Grams, 6, MidpointRounding.AwayFromZero)));
        Assert.Equal(18, sheet.PrefermentedFlourPercent, 1e-9);
        Assert.Equal(sheet.Dough.Grams, sheet.FinalDough.Grams, 1e-9);
    }

    [Fact]
    public void The_final_mixing_puts_the_whole_dough_together() =>
        Gen.Select(Gen.Double[0, 60], Gen.Double[100, 50_000])
            .Sample(
                (prefermented, flour) =>
                {
                    var sheet = FormulaSheet.For(FrenchBread, [Poolish(prefermented)], Mass.FromGrams(flour)).Value;
                    Assert.Equal(sheet.Dough.Grams, sheet.FinalDough.Grams, flour * 1e-12);
                }
            );

    [Fact]
    public void More_water_in_the_poolish_than_in_the_bread_is_explained()
    {
        var why = FormulaSheet.For(FrenchBread, [Poolish(70)], Mass.FromKilograms(10)).Why!;
        Assert.Equal("more-ahead-than-total", why.Code);
        Assert.Equal("The sub-mixes hold 70 % of Water, but the whole dough has only 67 %.", why.Message);
    }

    [Fact]
    public void A_sub_mix_is_part_of_the_total()
    {
        var levain = new SubMix("Levain", Doughs.Of("l", Leavening.Yeast, ("whole_wheat_flour", 10), ("water", 10)).Lines);
        Assert.Equal("not-in-total", FormulaSheet.For(FrenchBread, [levain], Mass.FromKilograms(1)).Why!.Code);
    }

    private static WeighedIngredient Of(string id, double grams) => new(IngredientCatalog.Get(id), Mass.FromGrams(grams));
}
