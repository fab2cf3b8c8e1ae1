using ClassKit.Baking.Batches;
using ClassKit.Baking.Formulas;
using ClassKit.Baking.Ingredients;
using ClassKit.Baking.Quantities;
using ClassKit.Baking.Weighing;
using CsCheck;

namespace ClassKit.Baking.Tests.Batches;

public sealed class ScalingTests
{
    private static readonly Scales Fine = Scales.One(Mass.FromGrams(0.001));

    [Fact]
    public void Seventy_three_loaves_of_390_g_scale_as_on_the_college_worksheet()
    {
        // "Baker's Percentage Worksheet", author and year not known
        var batch = Scaling.FromPieces(Doughs.Worksheet, 73, Mass.FromGrams(390), DoughLoss.None, Fine).Value;

        Assert.Equal(
            [16747.06, 11220.53, 334.94, 167.47],
            batch.Lines.Select(line => Math.Round(line.Exact.Grams, 2, MidpointRounding.AwayFromZero))
        );
        Assert.Equal(28_470, batch.Exact.Grams, 9);
    }

    [Fact]
    public void A_dough_of_1340_g_at_182_percent_holds_736_g_of_flour()
    {
        // common practice, no source
        var formula = Doughs.Of("loaf", Leavening.Yeast, ("bread_flour", 100), ("water", 80), ("salt", 2));
        Assert.Equal(736.26, Scaling.FromDough(formula, Mass.FromKilograms(1.34), Fine).Value.Flour.Grams, 0.005);
    }

    [Fact]
    public void Several_flours_share_the_hundred_percent()
    {
        // A tutorial's sum, common practice: 1400 g at 173.5 %. It rounds the flour to 807 g before it takes shares of it, hence 404 and
        // not 403.
        var batch = Scaling.FromDough(Doughs.ThreeFlours, Mass.FromGrams(1400), Scales.One(Mass.FromGrams(1))).Value;

        Assert.Equal(807, batch.Flour.Grams, 0.5);
        Assert.All(batch.Lines.Zip([404, 161, 242, 565, 12, 16]), pair => Assert.Equal(pair.Second, pair.First.Exact.Grams, 0.6));
    }

    [Fact]
    public void The_ingredient_that_is_short_limits_the_batch()
    {
        // a tutorial's sum, common practice: 50 g of milk at 10 %, total 163 %
        var formula = Doughs.Of(
            "milk_loaf",
            Leavening.Yeast,
            ("bread_flour", 100),
            ("whole_milk", 10),
            ("water", 50),
            ("salt", 2),
            ("instant_yeast", 1)
        );
        var batch = Scaling.FromIngredient(formula, IngredientCatalog.Get("whole_milk"), Mass.FromGrams(50), Fine).Value;

        Assert.Equal(815, batch.Exact.Grams, 9);
        Assert.Equal(500, batch.Flour.Grams, 9);
    }

    /// <summary>
    /// What is 100 % is 100 %: 92.46 g of flour and as much sugar are not 93 g and 92 g, whatever remainder the total leaves.
    /// </summary>
    [Fact]
    public void Lines_of_one_percentage_are_weighed_alike()
    {
        var formula = Doughs.Of(
            "cake",
            Leavening.Chemical,
            ("bread_flour", 100),
            ("sugar", 100),
            ("unsalted_butter", 50),
            ("whole_egg", 50),
            ("whole_milk", 70)
        );
        for (var grams = 100; grams < 400; grams++)
        {
            var batch = Scaling.FromDough(formula, Mass.FromGrams(grams), Scales.One(Mass.FromGrams(1))).Value;
            Assert.All(batch.Lines.GroupBy(line => line.Percent), alike => Assert.Single(alike.Select(line => line.Weighed).Distinct()));
            Assert.Equal(batch.Exact.Grams, batch.Weighed.Grams, 2.6);
        }
    }

    [Fact]
    public void Weighed_masses_are_what_the_scales_can_show_and_sum_to_the_dough()
    {
        var batch = Scaling.FromPieces(Doughs.Buns, 6, Mass.FromGrams(60), DoughLoss.Of(5), Scales.Common).Value;

        foreach (var line in batch.Lines)
            Assert.Equal(0, Math.IEEERemainder(line.Weighed.Grams, line.Resolution.Grams), 1e-9);
        Assert.All(batch.Lines.Where(line => line.Ingredient.Id is "salt" or "instant_yeast"), line =>
            Assert.Equal(0.1, line.Resolution.Grams)
        );
        Assert.Equal(batch.Exact.Grams, batch.Weighed.Grams, 0.5);
    }

    [Fact]
    public void Largest_remainders_get_the_last_grams()
    {
        // By hand: 100 g at 100/67/2/1 are 58.82, 39.41, 1.18, 0.59. Rounded down 58 + 39 + 1 + 0 = 98, and the two grams left go to .82
        // and .59.
        var batch = Scaling.FromDough(Doughs.Worksheet, Mass.FromGrams(100), Scales.One(Mass.FromGrams(1))).Value;
        Assert.Equal([59, 39, 1, 1], batch.Lines.Select(line => line.Weighed.Grams));
    }

    [Fact]
    public void What_the_scale_cannot_show_is_marked()
    {
        var batch = Scaling.FromDough(Doughs.Worksheet, Mass.FromGrams(40), Scales.One(Mass.FromGrams(5))).Value;
        Assert.Contains(batch.Lines, line => line.Ingredient.Id == "instant_yeast" && line.IsBelowScale);
    }

    [Fact]
    public void A_batch_on_one_scale_always_sums_to_its_rounded_total() =>
        Gen.Select(
                Gen.Double[1, 50_000],
                Doughs.AnyOf(0.1, 0.5, 1.0, 2.0, 5.0),
                Doughs.AnyOf(Doughs.Worksheet, Doughs.Buns, Doughs.Muffins, Doughs.Popovers)
            )
            .Sample(
                (dough, division, formula) =>
                {
                    var batch = Scaling.FromDough(formula, Mass.FromGrams(dough), Scales.One(Mass.FromGrams(division))).Value;
                    // In decimal arithmetic, where 19141.35 g on a 0.1 g scale is a tie as it is written; in doubles the quotient is just
                    // below one.
                    var divisions = Math.Round((decimal)dough / (decimal)division, MidpointRounding.AwayFromZero);
                    Assert.Equal((double)(divisions * (decimal)division), batch.Weighed.Grams, 1e-6);
                    Assert.All(batch.Lines, line => Assert.True(Math.Abs(line.Weighed.Grams - line.Exact.Grams) < division + 1e-9));
                }
            );

    [Fact]
    public void A_batch_on_two_scales_comes_within_half_a_division_of_the_large_one() =>
        Gen.Select(
                Gen.Double[100, 50_000],
                Doughs.AnyOf(0.01, 0.1, 0.5),
                Doughs.AnyOf(Doughs.Worksheet, Doughs.Buns, Doughs.Muffins, Doughs.Popovers)
            )
            .Sample(
                (dough, small, formula) =>
                {
                    var batch = Scaling
                        .FromDough(formula, Mass.FromGrams(dough), new Scales(Mass.FromGrams(1), Mass.FromGrams(small)))
                        .Value;
                    Assert.True(Math.Abs(batch.Weighed.Grams - dough) <= 0.5 + 1e-9);
                }
            );

    [Fact]
    public void Scaling_to_the_dough_of_a_batch_gives_the_batch_again() =>
        Gen.Select(Gen.Double[1, 50_000], Doughs.AnyOf(Doughs.Worksheet, Doughs.Buns, Doughs.Muffins))
            .Sample(
                (flour, formula) =>
                {
                    var there = Scaling.FromFlour(formula, Mass.FromGrams(flour), Fine).Value;
                    var back = Scaling.FromDough(formula, there.Exact, Fine).Value;
                    Assert.Equal(flour, back.Flour.Grams, flour * 1e-12);
                }
            );

    [Fact]
    public void The_batch_tells_how_it_was_computed()
    {
        var steps = Scaling.FromPieces(Doughs.Worksheet, 73, Mass.FromGrams(390), DoughLoss.Of(5), Fine).Value.Explanation.Steps;

        Assert.Equal("dough in the pieces = pieces × mass of a piece = 73 × 390 g = 28,470 g", steps[0].ToString());
        Assert.Equal("dough to mix = dough in the pieces / (1 - loss) = 28,470 g / (1 - 5 %) = 29,968 g", steps[1].ToString());
        Assert.Equal("flour = dough × 100 / total % = 29,968 g × 100 / 170 = 17,628 g", steps[2].ToString());
    }
}
