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
        var answers = ShippedBank.Work("wet_bubble", ("bubble", 1), ("start", 30), ("end", 90), ("vapour_start", 4.247), ("vapour_end", 70.182), ("outside", 101.325));

        Assert.Equal(3.734, answers["grown"], 0.001);
    }

    [Fact]
    public void Water_takes_1670_times_its_room_as_steam()
    {
        // IAPWS-IF97: 1.673 L/g at 101,325 Pa; 1 L of water at 20 °C is 998.2 g.
        var answers = ShippedBank.Work("choux_puffs", ("paste", 998.2), ("loss", 1), ("steam_space", 1.673), ("pieces", 1), ("hollow", 1000));

        Assert.Equal(1670, answers["fillings"], 1.0);
    }

    [Theory]
    // US Standard Atmosphere 1976, geopotential altitude: 1500 m 84,556 Pa, 2000 m 79,495 Pa, 1000 m 89,875 Pa; at sea level 101,325 Pa.
    [InlineData(84.556, 1.1983)]
    [InlineData(79.495, 1.2746)]
    [InlineData(89.875, 1.1274)]
    public void Thin_air_gives_gas_room_by_the_standard_atmosphere(double local, double growth) =>
        Assert.Equal(growth, ShippedBank.Work("mountain_powder", ("local", local), ("sea", 101.325), ("powder", 40), ("gas_space", 0.067))["growth"], 0.0001);

    [Fact]
    public void Ten_grams_of_powder_make_two_thirds_of_a_litre()
    {
        // 12 % available carbon dioxide, 25 °C, 101,325 Pa: 0.667 L (calculated); the problem's text says 0.067 L a gram.
        var answers = ShippedBank.Work("mountain_powder", ("local", 101.3), ("sea", 101.3), ("powder", 10), ("gas_space", 0.067));

        Assert.Equal(0.667, answers["gas"], 0.004);
    }

    [Theory]
    // Extension table of Colorado State University and USDA, reprinted at pastryscoop.com.
    [InlineData(2000, 208.4)]
    [InlineData(5000, 203.0)]
    [InlineData(7500, 198.4)]
    [InlineData(10_000, 194.0)]
    public void Water_boils_where_the_extension_table_says(double feet, double boil) =>
        Assert.Equal(boil, ShippedBank.Work("syrup_in_the_hills", ("altitude", feet), ("sea_boil", 212), ("per_thousand", 1.8), ("syrup", 238))["boil"], 0.15);

    [Fact]
    public void A_gauge_at_nought_changes_nothing_and_at_one_atmosphere_doubles()
    {
        // Boyle's law; gauge pressure counts from the pressure of the air. Common practice, no published example found.
        Assert.Equal(1, ShippedBank.Work("siphon_sponge", ("gauge", 0), ("outside", 101.325), ("bubbles", 100), ("batter", 400))["growth"], 1e-12);
        Assert.Equal(600, ShippedBank.Work("siphon_sponge", ("gauge", 101.325), ("outside", 101.325), ("bubbles", 100), ("batter", 400))["foam"], 1e-9);
    }
}
