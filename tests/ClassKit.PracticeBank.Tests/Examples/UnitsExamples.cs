using ClassKit.PracticeBank.Tests.Bank;

namespace ClassKit.PracticeBank.Tests.Examples;

/// <summary>Published conversions and household weights, put in as givens.</summary>
public sealed class UnitsExamples
{
    [Theory]
    // NIST SP 811, B.9; and the printed pairs of the FDA Food Code, which are whole degrees: 41 °F 5 °C, 135 °F 57 °C, 70 °F 21 °C, 165 °F
    // 74 °C.
    [InlineData(350, 176.667, 0.001)]
    [InlineData(356, 180, 0.001)]
    [InlineData(-40, -40, 0.001)]
    [InlineData(41, 5, 0.5)]
    [InlineData(135, 57, 0.5)]
    [InlineData(70, 21, 0.5)]
    [InlineData(165, 74, 0.5)]
    public void Degrees_Fahrenheit_become_the_published_degrees_Celsius(double fahrenheit, double celsius, double within)
    {
        var answers = ShippedBank.Work("oven_and_fridge", ("oven", fahrenheit), ("fridge", fahrenheit), ("rise", 18));

        Assert.Equal(celsius, answers["oven_c"], within);
        Assert.Equal(celsius, answers["fridge_c"], within);
        Assert.Equal(10, answers["rise_c"], 1e-12);
    }

    [Fact]
    public void Two_and_a_half_pounds_are_1134_grams()
    {
        // NIST Handbook 44, appendix C: 2.5 lb are 1133.980925 g; the problem's ounce is rounded to 28.35 g.
        var answers = ShippedBank.Work("pounds_and_ounces", ("pounds", 2), ("ounces", 8), ("ounce", 28.349523125), ("teams", 1));

        Assert.Equal(2.5, answers["decimal_pounds"], 1e-12);
        Assert.Equal(1133.980925, answers["grams"], 1e-9);
    }

    [Theory]
    // Armed Forces Recipe Service, General Information A-1: 4 lb 5.60 oz are 4.35 lb; its table of ounces in decimal pounds.
    [InlineData(4, 5.60, 4.35)]
    [InlineData(0, 3, 0.19)]
    [InlineData(0, 7, 0.44)]
    [InlineData(0, 10, 0.63)]
    [InlineData(0, 13, 0.81)]
    public void Ounces_are_sixteenths_of_a_pound(double pounds, double ounces, double decimals) =>
        Assert.Equal(
            decimals,
            ShippedBank.Work("pounds_and_ounces", ("pounds", pounds), ("ounces", ounces), ("ounce", 28.35), ("teams", 1))["decimal_pounds"],
            0.006
        );

    [Fact]
    public void Cups_and_spoons_weigh_what_the_food_tables_say()
    {
        // USDA SR28: 3/4 cup of all-purpose flour 93.75 g; 2 tsp of baking powder 9.2 g; a stick of butter, 8 tbsp, 113 g.
        var answers = ShippedBank.Work(
            "cups_and_spoons",
            ("flour", 0.75),
            ("butter", 8),
            ("powder", 2),
            ("cup_flour", 125),
            ("spoon_butter", 14.2),
            ("spoon_powder", 4.6)
        );

        Assert.Equal(93.75, answers["flour_grams"], 1e-9);
        Assert.Equal(113, answers["butter_grams"], 1.0);
        Assert.Equal(9.2 / 93.75, answers["powder_percent"], 1e-9);
    }

    [Fact]
    public void Eight_fluid_ounces_of_honey_are_a_cup_of_it()
    {
        // NIST SP 811, B.8: a cup is 8 fl oz, 236.588 mL. USDA SR28: 339 g of honey.
        var answers = ShippedBank.Work(
            "fluid_ounces",
            ("honey", 8),
            ("fluid_ounce", 29.57),
            ("cup", 236.6),
            ("cup_honey", 339),
            ("ounce", 28.35)
        );

        Assert.Equal(236.588, answers["volume"], 0.05);
        Assert.Equal(339, answers["mass"], 0.1);
    }

    [Fact]
    public void Three_cups_are_710_millilitres()
    {
        // NIST SP 811, B.8: 3 cups, 24 fl oz, are 709.7647 mL; the problem's fluid ounce is rounded to 29.57 mL.
        Assert.Equal(
            709.7647,
            ShippedBank.Work("fluid_ounces", ("honey", 24), ("fluid_ounce", 29.57), ("cup", 236.6), ("cup_honey", 339), ("ounce", 28.35))[
                "volume"
            ],
            0.1
        );
    }

    [Fact]
    public void A_cup_each_of_flour_and_water_is_a_very_wet_dough()
    {
        // USDA SR28: 137 g of bread flour and 237 g of water a cup, 6.0 g of salt a teaspoon.
        var answers = ShippedBank.Work(
            "dough_in_cups",
            ("flour", 1),
            ("water", 1),
            ("salt", 1),
            ("cup_flour", 137),
            ("cup_water", 237),
            ("spoon_salt", 6)
        );

        Assert.Equal(237.0 / 137, answers["hydration"], 1e-12);
        Assert.Equal(6.0 / 137, answers["salt_percent"], 1e-12);
    }
}
