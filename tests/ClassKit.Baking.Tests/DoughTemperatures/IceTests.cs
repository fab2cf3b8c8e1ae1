using ClassKit.Baking.DoughTemperatures;
using ClassKit.Baking.Quantities;
using CsCheck;

namespace ClassKit.Baking.Tests.DoughTemperatures;

public sealed class IceTests
{
    [Theory]
    // Bakery supplier's table, pounds of ice per pound of water; the equation reproduces it to 0.0025
    [InlineData(80, 50, 0.155)]
    [InlineData(60, 30, 0.172)]
    [InlineData(40, 20, 0.130)]
    [InlineData(32, 0, 0.222)]
    [InlineData(32, -30, 0.430)]
    [InlineData(80, 0, 0.416)]
    [InlineData(70, 50, 0.109)]
    public void Ice_per_water_is_that_of_the_suppliers_table(double tap, double wanted, double share) =>
        Assert.Equal(
            share,
            Ice.For(Mass.FromPounds(1), Temperature.FromFahrenheit(tap), Temperature.FromFahrenheit(wanted)).Value.Ice.Pounds,
            0.0025
        );

    [Fact]
    public void Forty_kilograms_from_20_to_10_C_take_4_kilograms_of_ice()
    {
        // Heat balance by hand: 40 × 10 / (80 + 20)
        var iced = Ice.For(Mass.FromKilograms(40), Temperature.FromCelsius(20), Temperature.FromCelsius(10)).Value;
        Assert.Equal(4.000, iced.Ice.Kilograms, 1e-9);
        Assert.Equal(36.000, iced.Liquid.Kilograms, 1e-9);
    }

    [Fact]
    public void Counting_the_melting_only_asks_for_more()
    {
        // a baker's worked sum, common practice, no source: 30 L from 18 °C to 13 °C, 1.875 kg of ice and 28.125 L of water; the closed
        // balance gives 1.531 kg
        var melt = Ice.For(
            Mass.FromKilograms(30),
            Temperature.FromCelsius(18),
            Temperature.FromCelsius(13),
            IceModel.ReplacingMeltOnly
        ).Value;
        Assert.Equal(1.875, melt.Ice.Kilograms, 1e-9);
        Assert.Equal(28.125, melt.Liquid.Kilograms, 1e-9);
        Assert.Equal(
            1.531,
            Ice.For(Mass.FromKilograms(30), Temperature.FromCelsius(18), Temperature.FromCelsius(13)).Value.Ice.Kilograms,
            0.0005
        );
    }

    [Fact]
    public void Ice_on_top_of_the_water_is_counted_against_the_wanted_temperature()
    {
        // The published 4.4 kg for 40 kg from 20 °C to 10 °C has 80 + wanted below the line, which is ice added: 40 × 10 / 90
        var added = Ice.For(Mass.FromKilograms(40), Temperature.FromCelsius(20), Temperature.FromCelsius(10), IceModel.Added).Value;
        Assert.Equal(4.4, added.Ice.Kilograms, 0.05);
        Assert.Equal(40, added.Liquid.Kilograms);
    }

    [Fact]
    public void Heat_lost_by_the_water_is_heat_taken_up_by_the_ice() =>
        Gen.Select(Gen.Double[0.1, 100], Gen.Double[5, 35], Gen.Double[0.1, 5])
            .Sample(
                (kilograms, tap, drop) =>
                {
                    var wanted = tap - drop;
                    var iced = Ice.For(Mass.FromKilograms(kilograms), Temperature.FromCelsius(tap), Temperature.FromCelsius(wanted)).Value;
                    Assert.Equal(iced.Liquid.Kilograms * drop, iced.Ice.Kilograms * (Ice.MeltingKelvins + wanted), kilograms * 1e-9);
                    Assert.Equal(kilograms, (iced.Ice + iced.Liquid).Kilograms, kilograms * 1e-12);
                }
            );

    [Fact]
    public void Cold_taps_need_no_ice() =>
        Assert.Equal(0, Ice.For(Mass.FromGrams(500), Temperature.FromCelsius(8), Temperature.FromCelsius(12)).Value.Ice.Grams);

    [Fact]
    public void More_ice_than_water_is_explained() =>
        Assert.Equal(
            "not-enough-water-to-freeze",
            Ice.For(Mass.FromGrams(500), Temperature.FromCelsius(20), Temperature.FromCelsius(-90)).Why!.Code
        );

    [Fact]
    public void No_water_cannot_be_cooled() =>
        Assert.Equal("no-water", Ice.For(default, Temperature.FromCelsius(20), Temperature.FromCelsius(5)).Why!.Code);
}
