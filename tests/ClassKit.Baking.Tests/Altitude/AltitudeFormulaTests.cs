using ClassKit.Baking.Altitude;
using ClassKit.Baking.Formulas;
using ClassKit.Baking.Ingredients;
using ClassKit.Baking.Quantities;

namespace ClassKit.Baking.Tests.Altitude;

public sealed class AltitudeFormulaTests
{
    private const double Denver = 5280 * 0.3048;

    [Fact]
    public void At_5000_feet_the_middle_of_the_published_ranges_can_be_had()
    {
        // Table of Colorado State University Extension and USDA, 5000 ft: powder less 1/8 to 1/4, sugar less 1/2 to 2 tbsp and liquid more
        // 2 to 4 tbsp a cup of 16
        var changed = AltitudeFormula.For(Doughs.Muffins, 5000 * 0.3048, place: 0.5).Value;
        Assert.Equal(2.5 * (1 - 3 / 16.0), Of(changed, "baking_powder").Chosen, 1e-9);
        Assert.Equal(18 * (1 - 1.25 / 16), Of(changed, "sugar").Chosen, 1e-9);
        Assert.Equal(95 * (1 + 3 / 16.0), Of(changed, "buttermilk").Chosen, 1e-9);
        Assert.Equal(95 * 18 / 16.0, Of(changed, "buttermilk").Range.Low, 1e-9);
        Assert.Equal(95 * 20 / 16.0, Of(changed, "buttermilk").Range.High, 1e-9);
        Assert.Equal(new PublishedRange(15, 25), changed.OvenWarmer);
        Assert.DoesNotContain(changed.Lines, line => line.Ingredient.Id is "ap_flour" or "salt" or "whole_egg");
        Assert.Equal(20, changed.Adjusted.Lines.Single(line => line.Ingredient.Id == "whole_egg").Percent, 1e-9);
    }

    /// <summary>
    /// One change at a time, and the leavening first (Colorado State University, 12 December 2002); a small scale shows 0.1 g, a tenth of a
    /// per cent of 100 g of flour.
    /// </summary>
    [Fact]
    public void A_first_trial_changes_the_leavening_alone_by_the_least_that_is_published()
    {
        var changed = AltitudeFormula.For(Doughs.Muffins, 5000 * 0.3048).Value;
        Assert.Equal(2.2, Of(changed, "baking_powder").Chosen, 1e-9); // 2.5 × 7/8 = 2.19
        Assert.Equal(18, Of(changed, "sugar").Chosen);
        Assert.Equal(95, Of(changed, "buttermilk").Chosen);
        Assert.All(changed.Adjusted.Lines.Zip(Doughs.Muffins.Lines).Where(pair => pair.First.Percent != pair.Second.Percent), pair =>
            Assert.Equal(IngredientRole.ChemicalLeavening, pair.First.Ingredient.Role)
        );
    }

    /// <summary>The same table: each line of sugar less 1 1/4 tbsp a cup of 16, the sugar in the batter and that on top of it.</summary>
    [Fact]
    public void An_ingredient_that_stands_twice_is_changed_line_by_line()
    {
        var crumbs = Doughs.Of(
            "crumbs",
            Leavening.Chemical,
            ("ap_flour", 100),
            ("buttermilk", 80),
            ("sugar", 18),
            ("baking_powder", 2.5),
            ("sugar", 5)
        );

        var sugars = AltitudeFormula
            .For(crumbs, 5000 * 0.3048, place: 0.5)
            .Value.Adjusted.Lines.Where(line => line.Ingredient.Id == "sugar");

        Assert.Equal([18 * (1 - 1.25 / 16), 5 * (1 - 1.25 / 16)], sugars.Select(line => Math.Round(line.Percent, 9)));
    }

    /// <summary>By hand, 6000 ft, half way from 5000 ft (powder less 1/8 to 1/4) to 7000 ft (1/4): 3/16 to 1/4.</summary>
    [Fact]
    public void Between_two_rows_of_a_table_the_change_is_between_theirs()
    {
        var row = AltitudeTable.Extension.For(6000 * 0.3048)!;
        Assert.Equal(3 / 16.0, row.PowderLess.Low, 1e-9);
        Assert.Equal(1 / 4.0, row.PowderLess.High, 1e-9);
        Assert.Equal(0.75, row.SugarLess.Low, 1e-9);
    }

    [Fact]
    public void A_table_for_cakes_leaves_a_bread_without_sugar_alone()
    {
        var soda = Doughs.Of("soda_bread", Leavening.Chemical, ("ap_flour", 100), ("buttermilk", 72), ("sugar", 2), ("baking_soda", 0.8));
        var changed = AltitudeFormula.For(soda, Denver).Value;
        Assert.Empty(changed.Lines);
        Assert.Equal(["cakes-first"], changed.Advice.Select(advice => advice.Code));
    }

    [Theory]
    [InlineData(0, 2.5 * 7 / 8)]
    [InlineData(1, 2.5 * 3 / 4)]
    public void The_least_and_the_most_change_can_be_chosen(double place, double powder) =>
        Assert.Equal(powder, Of(AltitudeFormula.For(Doughs.Muffins, 5000 * 0.3048, place: place).Value, "baking_powder").Chosen, 1e-9);

    [Fact]
    public void Another_table_changes_the_flour_too_and_it_is_still_100_percent()
    {
        // the other table, common practice, 7000 ft: flour more 3 to 4 tbsp a cup, powder less 1/4 to 1/2, sugar less 2 to 4 tbsp, liquid
        // more 3 to 4 tbsp
        var changed = AltitudeFormula.For(Doughs.Muffins, 7000 * 0.3048, AltitudeTable.CookBook, 0.5).Value;
        Assert.Equal(100 * (1 + 3.5 / 16), Of(changed, "ap_flour").Chosen, 1e-9);
        Assert.Equal(18 * (1 - 3 / 16.0), Of(changed, "sugar").Chosen, 1e-9);
        Assert.Equal(100, changed.Adjusted.FlourPercent, 1e-9);
        Assert.Equal(
            2.5 * (1 - 3 / 8.0) / (1 + 3.5 / 16),
            changed.Adjusted.Lines.Single(line => line.Ingredient.Id == "baking_powder").Percent,
            1e-9
        );
    }

    [Theory]
    // the other table, common practice, 10 000 ft, against the extension service's last row
    [InlineData(1 / 2.0, 2 / 3.0)]
    public void The_cook_book_goes_on_to_10_000_feet(double least, double most)
    {
        var row = AltitudeTable.CookBook.For(10_000 * 0.3048)!;
        Assert.Equal(new PublishedRange(least, most), row.PowderLess);
        Assert.Equal(7000, AltitudeTable.Extension.For(10_000 * 0.3048)!.FromFeet);
    }

    [Fact]
    public void Below_3000_feet_a_formula_stays_as_it_is()
    {
        var same = AltitudeFormula.For(Doughs.Muffins, 900).Value;
        Assert.Empty(same.Lines);
        Assert.Equal(Doughs.Muffins.Lines, same.Adjusted.Lines);
        Assert.Empty(same.Advice);
    }

    [Fact]
    public void Yeast_doughs_and_shells_keep_their_formula_and_get_advice()
    {
        var buns = AltitudeFormula.For(Doughs.Buns, Denver).Value;
        var popovers = AltitudeFormula.For(Doughs.Popovers, Denver).Value;
        Assert.Equal(Doughs.Buns.Lines, buns.Adjusted.Lines);
        Assert.Contains(buns.Advice, advice =>
            advice.Code == "rises-sooner" && advice.Message.Contains("1.21 times", StringComparison.Ordinal)
        ); // 101 325 / 83 430 Pa, US Standard Atmosphere 1976
        Assert.Contains(popovers.Advice, advice => advice.Code == "boils-cooler");
    }

    [Theory]
    [InlineData(-2000)]
    [InlineData(50_000)]
    [InlineData(double.NaN)]
    public void Where_nobody_bakes_is_explained(double metres) =>
        Assert.Equal("altitude-out-of-range", AltitudeFormula.For(Doughs.Muffins, metres).Why!.Code);

    private static AdjustedLine Of(AltitudeFormula changed, string id) => changed.Lines.Single(line => line.Ingredient.Id == id);
}
