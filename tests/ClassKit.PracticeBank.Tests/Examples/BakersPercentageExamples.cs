using ClassKit.PracticeBank.Tests.Bank;

namespace ClassKit.PracticeBank.Tests.Examples;

/// <summary>Published worked examples of the baker's percentage, put in as givens.</summary>
public sealed class BakersPercentageExamples
{
    [Theory]
    // Texas Education Agency, "Calculating Baker's Percentages (Key)", 2015; ounces, and the key cuts off the third decimal.
    [InlineData(60, 24, 40)]
    [InlineData(64, 28, 43.75)]
    [InlineData(48, 30, 62.5)]
    [InlineData(15, 6, 40)]
    [InlineData(48, 11.5, 23.95)]
    public void Weights_become_the_percentages_of_a_published_key(double flour, double other, double percent)
    {
        var answers = ShippedBank.Work("handwritten_recipe", ("flour", flour), ("water", other), ("salt", other));

        Assert.Equal(percent, answers["water_percent"] * 100, 0.01);
        Assert.Equal(percent, answers["salt_percent"] * 100, 0.01);
    }

    [Fact]
    public void A_total_formula_less_its_poolish_is_the_published_final_dough()
    {
        // Sosland Publishing, Bake, "French bread with poolish": 10 kg of flour, 67 % water, 2 % salt; 3.3 kg of each in the poolish.
        var answers = ShippedBank.Work(
            "poolish_split",
            ("flour", 10_000),
            ("water_percent", 0.67),
            ("salt_percent", 0.02),
            ("prefermented", 0.33)
        );

        Assert.Equal(3300, answers["poolish_flour"], 1e-9);
        Assert.Equal(6700, answers["final_flour"], 1e-9);
        Assert.Equal(3400, answers["final_water"], 1e-9);
        Assert.Equal(200, answers["salt"], 1e-9);
    }

    [Fact]
    public void A_final_dough_and_its_poolish_come_to_the_hydration_of_the_whole()
    {
        // a tutorial's sum, common practice: poolish 468 + 468, final dough 900 flour, 468 water, 27 salt. The overall figures are
        // calculated.
        var answers = ShippedBank.Work("poolish_card", ("poolish", 936), ("final_flour", 900), ("final_water", 468), ("salt", 27));

        Assert.Equal(68.42, answers["hydration"] * 100, 0.01);
        Assert.Equal(34.21, answers["prefermented"] * 100, 0.01);
    }

    [Fact]
    public void Flour_weighed_by_the_worksheet_gives_its_water_salt_and_yeast()
    {
        // College worksheet "Baker's Percentage Worksheet", author and year not known: the sheet rounds to 16747 g of flour first; 67, 2
        // and 1 %.
        var answers = ShippedBank.Work(
            "pan_loaf",
            ("flour", 16747),
            ("water_percent", 0.67),
            ("salt_percent", 0.02),
            ("yeast_percent", 0.01)
        );

        Assert.Equal(11220.49, answers["water"], 0.01);
        Assert.Equal(334.94, answers["salt"], 0.01);
        Assert.Equal(167.47, answers["yeast"], 0.01);
    }

    [Fact]
    public void Three_flours_are_shares_of_all_of_them()
    {
        // a tutorial's sum, common practice: flours 404, 161 and 242 g, water 565 g, salt 16 g, published as 20 % whole wheat, 70 % water,
        // 2 % salt; whole grams, so to half a per cent.
        var answers = ShippedBank.Work(
            "two_flours",
            ("bread_flour", 404 + 242),
            ("wholemeal", 161),
            ("water", 565),
            ("salt_percent", 0.02)
        );

        Assert.Equal(20, answers["wholemeal_percent"] * 100, 0.1);
        Assert.Equal(70, answers["hydration"] * 100, 0.1);
        Assert.Equal(16, answers["salt"], 0.5);
    }

    [Fact]
    public void A_starter_fed_one_to_two_to_two_is_a_fifth_old_starter()
    {
        // Parts as bakers say them, 1:2:2: by definition. 500 g are 100 g, 200 g and 200 g.
        var answers = ShippedBank.Work("starter_build", ("levain", 450), ("kept", 50), ("flour_parts", 2), ("water_parts", 2));

        Assert.Equal([500, 100, 200, 200], [answers["ripe"], answers["one_part"], answers["flour"], answers["water"]]);
    }

    [Fact]
    public void A_large_egg_brings_the_water_that_USDA_says()
    {
        // USDA SR28: a large egg is 50 g and 76.15 % water, 38.08 g; a cup of milk is 244 g and 88.13 % water, 215.04 g.
        var answers = ShippedBank.Work(
            "without_the_egg",
            ("flour", 125),
            ("milk", 244),
            ("egg", 50),
            ("egg_water", 0.7615),
            ("milk_water", 0.8813)
        );

        Assert.Equal(38.08, answers["water"], 0.01);
        Assert.Equal((215.04 + 38.08) / 125, answers["wetness"], 0.0001);
    }

    [Fact]
    public void A_stick_of_butter_and_a_cup_of_milk_bring_the_water_that_USDA_says()
    {
        // USDA SR28: a stick of unsalted butter is 113 g, 17.94 % water (20.27 g) and 81.11 % fat; whole milk 88.13 % water (215.04 g a
        // cup) and 3.25 % fat.
        var answers = ShippedBank.Work(
            "without_the_milk",
            ("flour", 100),
            ("milk", 244),
            ("butter", 113),
            ("milk_water", 0.8813),
            ("milk_fat", 0.0325),
            ("butter_water", 0.1794),
            ("butter_fat", 0.8111)
        );

        Assert.Equal(2.3531, answers["water_percent"], 0.0002);
        Assert.Equal(7.93 + 91.65, answers["oil"], 0.01);
    }

    [Fact]
    public void A_dough_of_the_Guilds_percentages_is_recognised_by_its_mass()
    {
        // "Formatting Guild Formulas": flour 10 kg, water 67 %, salt 2 %, here without its yeast: 16.9 kg. A card of 67 % then asks for no
        // more flour.
        var answers = ShippedBank.Work(
            "the_wrong_jug",
            ("flour", 10_000),
            ("water_percent", 0.67),
            ("salt_percent", 0.02),
            ("dough", 16_900)
        );

        Assert.Equal(0.67, answers["hydration"], 1e-12);
        Assert.Equal(0, answers["more_flour"], 1e-9);
    }
}
