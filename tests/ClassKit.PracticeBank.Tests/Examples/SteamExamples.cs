using ClassKit.PracticeBank.Tests.Bank;

namespace ClassKit.PracticeBank.Tests.Examples;

/// <summary>Published figures of steam and expansion, put in as givens.</summary>
public sealed class SteamExamples
{
    [Fact]
    public void Dry_gas_grows_by_a_fifth_from_thirty_to_ninety_degrees()
    {
        // Charles's law with NIST SP 811's kelvin: 363.15/303.15 = 1.198.
        var answers = ShippedBank.Work("beaten_air", ("air", 1000), ("start", 30), ("end", 90));

        Assert.Equal(1.198, answers["growth"], 0.0005);
        Assert.Equal(1198, answers["volume"], 0.5);
    }

    [Fact]
    public void A_wet_bubble_grows_almost_fourfold()
    {
        // Calculated with vapour pressures of IAPWS-IF97 at 101,325 Pa: 3.734 times.
        var answers = ShippedBank.Work(
            "wet_bubble",
            ("bubble", 1),
            ("start", 30),
            ("end", 90),
            ("vapour_start", 4.247),
            ("vapour_end", 70.182),
            ("outside", 101.325)
        );

        Assert.Equal(3.734, answers["grown"], 0.001);
    }

    [Fact]
    public void Water_takes_1670_times_its_room_as_steam()
    {
        // IAPWS-IF97: 1.673 L/g at 101,325 Pa; 1 L of water at 20 °C is 998.2 g.
        var answers = ShippedBank.Work(
            "choux_puffs",
            ("paste", 998.2),
            ("loss", 1),
            ("steam_space", 1.673),
            ("pieces", 1),
            ("hollow", 1000)
        );

        Assert.Equal(1670, answers["fillings"], 1.0);
    }

    [Fact]
    public void Steam_takes_a_quarter_more_room_under_eight_hundred_hectopascals()
    {
        // Saturated steam, Y. A. Çengel and M. A. Boles, "Thermodynamics", table A-5, from memory: 2.0871 m³/kg at 80 kPa, 1.6720 at
        // 101.325 kPa (IAPWS-IF97 1.673).
        var answers = ShippedBank.Work(
            "steam_up_high",
            ("pieces", 1),
            ("hollow", 2087.1),
            ("gone", 1000),
            ("sea_space", 1.673),
            ("high_space", 2.087)
        );

        Assert.Equal(1, answers["hills"], 0.001);
        Assert.Equal(415, answers["more"], 2.0);
    }

    [Theory]
    // US Standard Atmosphere 1976, geopotential altitude: 1000 m 89,875 Pa, 1500 m 84,556 Pa, 2000 m 79,495 Pa; 101,325 Pa at sea level;
    // IAPWS-IF97: 38.595 kPa at 75 °C. The quotients by hand.
    [InlineData(89.875, 1.2233)]
    [InlineData(84.556, 1.3648)]
    [InlineData(79.495, 1.5337)]
    public void A_wet_bubble_grows_more_in_thin_air_than_dry_gas(double local, double growth) =>
        Assert.Equal(
            growth,
            ShippedBank.Work("mountain_powder", ("local", local), ("sea", 101.325), ("vapour", 38.595), ("powder", 40))["growth"],
            0.0001
        );

    [Fact]
    public void The_specific_gravity_of_water_is_one_and_a_light_batter_is_a_third_air()
    {
        // Definition; a batter of 0.80 that is 1.20 without air holds 1 - 0.80/1.20 of it. Bake magazine, "Measuring specific gravity for
        // cakes": 0.80 to 0.90 for creamed batters.
        Assert.Equal(
            1,
            ShippedBank.Work("batter_in_a_cup", ("empty", 80), ("with_water", 317), ("with_batter", 317), ("no_air", 1.2))["gravity"],
            1e-12
        );
        Assert.Equal(
            1.0 / 3,
            ShippedBank.Work("batter_in_a_cup", ("empty", 80), ("with_water", 330), ("with_batter", 280), ("no_air", 1.2))["air"],
            1e-12
        );
    }

    [Theory]
    // Table of Colorado State University Extension and USDA.
    [InlineData(2000, 208.4)]
    [InlineData(5000, 203.0)]
    [InlineData(7500, 198.4)]
    [InlineData(10_000, 194.0)]
    public void Water_boils_where_the_extension_table_says(double feet, double boil) =>
        Assert.Equal(
            boil,
            ShippedBank.Work("syrup_in_the_hills", ("altitude", feet), ("sea_boil", 212), ("per_thousand", 1.8), ("syrup", 238))["boil"],
            0.15
        );

    [Fact]
    public void A_gauge_at_nought_frees_nothing_and_one_atmosphere_frees_what_is_dissolved()
    {
        // Boyle and Henry: twice the pressure holds twice the gas, and the half that is freed takes twice the room. By hand; no published
        // example found.
        (string, double)[] siphon = [("outside", 101.325), ("water", 200), ("holds", 1.1), ("batter", 400)];

        Assert.Equal(0, ShippedBank.Work("siphon_sponge", [.. siphon, ("gauge", 0)])["freed"], 1e-9);
        Assert.Equal(620, ShippedBank.Work("siphon_sponge", [.. siphon, ("gauge", 101.325)])["foam"], 1e-9);
    }
}
