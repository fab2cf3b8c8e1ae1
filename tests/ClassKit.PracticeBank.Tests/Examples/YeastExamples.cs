using ClassKit.PracticeBank.Tests.Bank;

namespace ClassKit.PracticeBank.Tests.Examples;

/// <summary>Published worked examples of yeast, put in as givens.</summary>
public sealed class YeastExamples
{
    [Fact]
    public void Fresh_yeast_becomes_the_published_mass_of_active_dry()
    {
        // cook books, "Yeast conversions: fresh to dry": 30 g fresh, times 0.4, is 12 g active dry; two packets of 7 g.
        var answers = ShippedBank.Work("packets_of_dry", ("flour", 1000), ("fresh_percent", 0.03), ("dry_factor", 0.4), ("packet", 7));

        Assert.Equal(30, answers["fresh"], 1e-9);
        Assert.Equal(12, answers["active_dry"], 1e-9);
        Assert.Equal(2, answers["packets"]);
    }

    [Theory]
    // AACC Approved Method 89-01.01: compressed 30 %, active dry 92 %, instant 95 % solids. 32.61 g and 31.58 g are calculated from them.
    [InlineData(0.92, 32.61)]
    [InlineData(0.95, 31.58)]
    public void Equal_solids_give_the_mass_of_a_dry_yeast(double solids, double dry) =>
        Assert.Equal(
            dry,
            ShippedBank.Work("yeast_by_solids", ("fresh", 100), ("fresh_solids", 0.30), ("instant_solids", solids))["instant"],
            0.01
        );

    [Fact]
    public void Five_degrees_at_ten_per_cent_each_compound()
    {
        // Sosland Publishing, Bake, "The science of fermentation": a degree is about 10 %. Five degrees are 1.1 to the fifth, 1.6105.
        var answers = ShippedBank.Work("warm_corner", ("usual", 25), ("warm", 30), ("minutes", 161.05), ("faster", 0.10));

        Assert.Equal(1.6105, answers["factor"], 0.0001);
        Assert.Equal(100, answers["time"], 0.01);
    }

    [Fact]
    public void Twice_the_time_takes_half_the_yeast_at_the_same_temperature()
    {
        // The rule itself; five degrees cooler it is 1.6105 times as much.
        (string, double)[] usual =
        [
            ("flour", 1000),
            ("yeast_percent", 0.01),
            ("minutes", 60),
            ("long_minutes", 120),
            ("usual", 25),
            ("faster", 0.10),
        ];

        Assert.Equal(5, ShippedBank.Work("later_bake", [.. usual, ("cool", 25)])["yeast"], 1e-9);
        Assert.Equal(5 * 1.6105, ShippedBank.Work("later_bake", [.. usual, ("cool", 20)])["yeast"], 0.001);
    }

    [Theory]
    // Gay-Lussac's equation with IUPAC atomic weights: 10 g of glucose give 4.886 g of carbon dioxide; 0.1 mol of glucose gives 0.2 mol,
    // 4.975 L at 30 °C and 101,325 Pa.
    [InlineData(10, 4.886, 0.001, 2.762, 0.005)]
    [InlineData(18.0156, 8.802, 0.001, 4.975, 0.005)]
    public void Glucose_gives_its_gas(double sugar, double gas, double withinGas, double litres, double withinLitres)
    {
        var answers = ShippedBank.Work(
            "sugar_to_gas",
            ("sugar", sugar),
            ("gas_share", 0.4886),
            ("molar_mass", 44.01),
            ("mole_space", 22.414),
            ("temperature", 30)
        );

        Assert.Equal(gas, answers["gas"], withinGas);
        Assert.Equal(litres, answers["volume"], withinLitres);
    }

    [Fact]
    public void Sugar_up_to_five_per_cent_does_no_harm()
    {
        // Marek and Bushuk, Cereal Chem. 44 (1967): the rate falls above some 5 % of sugar. How steeply is the exercise's own rule: at half
        // of the speed it is twice the time.
        (string, double)[] dough = [("lean_minutes", 60), ("free", 0.05), ("slower", 0.05), ("yeast_percent", 0.01), ("flour", 1000)];

        Assert.Equal(60, ShippedBank.Work("sweet_dough_slows", [.. dough, ("sugar_percent", 0.05)])["minutes"], 1e-9);
        Assert.Equal(120, ShippedBank.Work("sweet_dough_slows", [.. dough, ("sugar_percent", 0.15)])["minutes"], 1e-9);
    }

    [Fact]
    public void Salt_weighs_on_yeast_about_six_times_as_much_as_sugar()
    {
        // Physiological saline, 9 g of salt in a litre of water, has 308 milliosmoles (its label); six times for salt: Pyler and Gorton,
        // from memory.
        var answers = ShippedBank.Work(
            "salt_in_the_water",
            ("salt", 9),
            ("sugar", 52.7),
            ("water", 1000),
            ("salt_mole", 58.44),
            ("sugar_mole", 342.3)
        );

        Assert.Equal(0.308, answers["from_salt"], 0.0005);
        Assert.Equal(0.308, answers["from_sugar"], 0.0005);
        Assert.InRange(answers["as_much_sugar"] / 9, 5.5, 6.5);
    }
}
