using ClassKit.BenchSums.Results;
using static ClassKit.BenchSums.Tests.Typing;

namespace ClassKit.BenchSums.Tests;

/// <summary>Published worked examples, typed as people type them and read off the answers.</summary>
public class WorkedExampleTests
{
    /// <summary>
    /// Texas Education Agency, "Calculating Baker's Percentages (Key)", 2015: 28 oz of egg on 64 oz of flour are 43.75 %.
    /// </summary>
    [Fact]
    public void A_recipe_in_ounces_becomes_percentages() =>
        Assert.Equal(43.75, Work("percentages", ("recipe", "bread flour 64 oz; 28 oz whole egg")).Percent("Whole egg"), 1e-9);

    /// <summary>
    /// College worksheet "Baker's Percentage Worksheet", author and year not known: 28,470 g at 170 % hold 16,747.06 g of flour.
    /// </summary>
    [Fact]
    public void A_mass_of_dough_becomes_its_flour() =>
        Assert.Equal(
            16_747.06,
            Work("batch", ("formula", "bread flour 100, water 66, salt 2, sugar 2"), ("dough", "28.47 kg")).Grams("Bread flour"),
            0.5
        );

    /// <summary>a tutorial's sum, common practice: 50 g of milk at 10 % of a formula of 163 % make 815 g of dough.</summary>
    [Fact]
    public void What_is_short_says_how_far_it_goes() =>
        Assert.Equal(
            815,
            Work(
                    "batch-from-what-is-short",
                    ("formula", "bread flour 100, water 50, whole milk 10, salt 3"),
                    ("ingredient", "whole milk"),
                    ("on-hand", "50 g")
                )
                .Grams("dough"),
            0.5
        );

    /// <summary>Kendall College, "Recipe conversions": 5 portions of 8 oz to 10 of 4 oz is a factor of 1.</summary>
    [Fact]
    public void Portions_count_by_their_size() =>
        Assert.Equal(
            new SumQuantity.OfTimes(1),
            Work("portion-factor", ("portions", "5"), ("size", "8 oz"), ("wanted-portions", "10"), ("wanted-size", "4 oz")).Of("factor")
        );

    /// <summary>Water boils at 203.0 °F at 5,000 ft in extension tables; see BoilingWater.</summary>
    [Fact]
    public void Water_boils_sooner_in_the_mountains() =>
        Assert.Equal(
            203.0,
            ((SumQuantity.OfTemperature)Work("boiling-point", ("altitude", "5000 ft")).Of("boiling point")).Temperature.Fahrenheit,
            0.5
        );

    /// <summary>FDA Food Code 3-501.19: six hours if it was cold and never above 70 °F, four otherwise.</summary>
    [Theory]
    [InlineData("41 F", "70 F", 360)]
    [InlineData("41 F", "75 F", 240)]
    [InlineData("70 F", "70 F", 240)]
    [InlineData("60 C", "60 C", 240)] // 3-501.19(B)(1): out of hot holding, 4 h
    public void Food_off_temperature_goes_by_the_clock(string start, string warmest, double minutes) =>
        Assert.Equal(new SumQuantity.OfMinutes(minutes), Work("standing-time", ("start", start), ("warmest", warmest)).Of("discard after"));

    /// <summary>
    /// a bakery supplier's rule in Fahrenheit, water × (tap - wanted) / (tap + 112): 100 lb from 70 °F to 40 °F take 16.5 lb of ice.
    /// </summary>
    [Fact]
    public void Ice_takes_the_place_of_water() =>
        Assert.Equal(
            100 * 30 / 182.0,
            Work("ice", ("amount", "100 lb"), ("tap", "70 F"), ("wanted", "40 F")).Grams("ice") / 453.59237,
            0.01
        );

    /// <summary>21 CFR 137.180: at least 0.5 % of carbon dioxide. Half of the soda that gives it is too little.</summary>
    [Theory]
    [InlineData("1.2 g", true)]
    [InlineData("0.6 g", false)]
    public void Self_rising_flour_is_held_against_the_law(string soda, bool enough) =>
        Assert.Equal(
            new SumQuantity.OfTruth(enough),
            Work("self-rising-flour", ("flour", "100 g"), ("soda", soda), ("acid", "3 g")).Of("gas enough, 0.5 % or more")
        );

    /// <summary>USDA SR28 household weights: a cup of all-purpose flour is 125 g.</summary>
    [Fact]
    public void A_cup_is_what_the_table_says() =>
        Assert.Equal(312.5, Work("from-cups", ("ingredient", "all-purpose flour"), ("measure", "2 1/2 cups")).Grams("mass"), 1e-9);

    /// <summary>The sum rule of the trade: 3 × 78 °F - 70 - 72 - 24 = 68 °F; worked by hand.</summary>
    [Fact]
    public void Water_follows_from_the_factors_in_either_unit() =>
        Assert.Equal(
            68,
            (
                (SumQuantity.OfTemperature)
                    Work("water-temperature", ("dough", "78 F"), ("flour", "70 F"), ("room", "72 F"), ("friction", "24 F")).Of("water")
            )
                .Temperature
                .Fahrenheit,
            1e-9
        );
}
