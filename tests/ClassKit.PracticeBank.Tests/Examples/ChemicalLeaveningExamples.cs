using ClassKit.PracticeBank.Tests.Bank;

namespace ClassKit.PracticeBank.Tests.Examples;

/// <summary>Published figures of chemical leavening, put in as givens.</summary>
public sealed class ChemicalLeaveningExamples
{
    [Theory]
    // AACC Approved Method 02-32 defines the value: soda used up by 100 parts of acid. Values of acids as E. J. Pyler and L. A. Gorton,
    // "Baking Science and Technology", 4th edition, 2008, have them, from memory.
    [InlineData(80, 1.250)]
    [InlineData(72, 1.389)]
    [InlineData(100, 1.000)]
    [InlineData(45, 2.222)]
    [InlineData(33, 3.030)]
    public void A_gram_of_soda_takes_the_acid_of_its_neutralising_value(double value, double acid) =>
        Assert.Equal(
            acid,
            ShippedBank.Work("acid_for_the_soda", ("flour", 100), ("soda_percent", 0.01), ("nv", value), ("soda_gas", 0.524))["acid"],
            0.001
        );

    [Fact]
    public void Cream_of_tartar_weighs_what_a_data_book_says()
    {
        // J. Smith and L. Hong-Shum, Food Additives Data Book: 2.24 parts of tartrate to one of soda; trade tables round its value to 45,
        // which is 2.22.
        var answers = ShippedBank.Work("tin_of_powder", ("soda", 1), ("starch", 0), ("nv", 45), ("soda_gas", 0.524));

        Assert.Equal(2.24, answers["acid"], 0.02);
    }

    [Fact]
    public void A_powder_of_known_parts_has_its_strength()
    {
        // 30 g of soda, 41.67 g of an acid of 72 and starch to 112.2 g give 14.0 % (calculated from molar masses: 30 × 0.5239 / 112.2).
        var answers = ShippedBank.Work(
            "tin_of_powder",
            ("soda", 30),
            ("starch", (112.2 - 30 - 30 / 0.72) / 112.2),
            ("nv", 72),
            ("soda_gas", 0.524)
        );

        Assert.Equal(41.67, answers["acid"], 0.01);
        Assert.Equal(112.2, answers["powder"], 1e-9);
        Assert.Equal(14.0, answers["strength"] * 100, 0.05);
    }

    [Fact]
    public void Powder_of_twelve_per_cent_stands_for_its_share_of_soda()
    {
        // Sosland Publishing, Bakers Dictionary: 12 % available; by calculation 22.9 % of such a powder is soda.
        var answers = ShippedBank.Work("sweet_milk_instead", ("soda", 22.9), ("soda_gas", 0.524), ("powder_gas", 0.12), ("flour", 1000));

        Assert.Equal(100, answers["powder"], 0.3);
    }

    [Fact]
    public void Self_rising_flour_at_the_legal_least_takes_its_soda()
    {
        // 21 CFR 137.180: 0.5 % of carbon dioxide; by calculation at least 0.954 g of soda for 100 g of flour.
        var answers = ShippedBank.Work(
            "self_raising",
            ("flour", 100),
            ("gas_goal", 0.005),
            ("soda_gas", 0.524),
            ("nv", 72),
            ("limit", 0.045)
        );

        Assert.Equal(0.954, answers["soda"], 0.001);
    }

    [Fact]
    public void Five_grams_of_soda_fill_a_litre_and_a_half()
    {
        // By calculation from molar masses: 2.619 g of carbon dioxide, 1.456 L at 25 °C and 101,325 Pa.
        var answers = ShippedBank.Work(
            "soda_balloon",
            ("soda", 5),
            ("temperature", 25),
            ("soda_gas", 0.524),
            ("molar_mass", 44.01),
            ("mole_space", 22.414)
        );

        Assert.Equal(1.456, answers["volume"], 0.003);
    }

    [Fact]
    public void A_teaspoon_of_salt_and_one_of_soda_hold_the_sodium_that_USDA_says()
    {
        // USDA SR28 household measures: a teaspoon of salt, 6.0 g, holds 2325 mg of sodium; one of baking soda, 4.6 g, 1259 mg.
        var answers = ShippedBank.Work(
            "sodium_of_a_slice",
            ("slice", 100),
            ("total_percent", 1),
            ("salt_percent", 0.06),
            ("soda_percent", 0.046),
            ("salt_sodium", 0.38758),
            ("soda_sodium", 0.2736)
        );

        Assert.Equal(2325, answers["from_salt"], 1.0);
        Assert.Equal(1259, answers["from_soda"], 1.0);
    }

    [Fact]
    public void Bakers_ammonia_gives_gas_by_its_formula()
    {
        // NH4HCO3 gives NH3, CO2 and H2O; IUPAC atomic weights: 44.009/79.055 = 55.67 % and 17.031/79.055 = 21.54 %. 84.006 g of soda, a
        // mole, take a mole of it.
        var answers = ShippedBank.Work(
            "ammonia_for_crackers",
            ("soda", 84.006),
            ("soda_gas", 0.52388),
            ("ammonia_gas", 0.55669),
            ("ammonia_share", 0.21543)
        );

        Assert.Equal(79.055, answers["ammonium"], 0.01);
        Assert.Equal(17.031, answers["fumes"], 0.01);
    }

    [Fact]
    public void A_mole_of_potassium_bicarbonate_takes_the_place_of_a_mole_of_soda()
    {
        // IUPAC: KHCO3 100.114, NaHCO3 84.006, Na 22.990.
        var answers = ShippedBank.Work(
            "potassium_for_sodium",
            ("soda", 84.006),
            ("soda_mole", 84.006),
            ("potassium_mole", 100.114),
            ("soda_sodium", 22.990 / 84.006),
            ("muffins", 1)
        );

        Assert.Equal(100.114, answers["potassium"], 1e-9);
        Assert.Equal(22_990, answers["saved"], 1e-6);
    }
}
