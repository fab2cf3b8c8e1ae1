using ClassKit.Baking.Quantities;
using CsCheck;

namespace ClassKit.Baking.Tests.Quantities;

public sealed class ConversionTests
{
    // NIST SP 811, appendix B.8 and B.9, and NIST Handbook 44, appendix C: exact definitions

    [Fact]
    public void Two_and_a_half_pounds() => Assert.Equal(1133.980925, Mass.FromPounds(2.5).Grams, 1e-9);

    [Fact]
    public void Three_cups() => Assert.Equal(709.7647095, Volume.FromCups(3).Millilitres, 1e-9);

    [Theory]
    [InlineData(1, 14.78676478125)]
    public void A_tablespoon(double tablespoons, double millilitres) =>
        Assert.Equal(millilitres, Volume.FromTablespoons(tablespoons).Millilitres, 1e-12);

    [Fact]
    public void A_teaspoon() => Assert.Equal(4.92892159375, Volume.FromTeaspoons(1).Millilitres, 1e-12);

    [Fact]
    public void A_cup_has_48_teaspoons_16_tablespoons_and_8_fluid_ounces()
    {
        // OpenFormula's CONVERT(1;"cup";"tsp") = 48 as well
        var cup = Volume.FromCups(1);
        Assert.Equal(
            [48, 16, 8],
            [
                Math.Round(cup.Teaspoons, 9, MidpointRounding.ToEven),
                Math.Round(cup.Tablespoons, 9, MidpointRounding.ToEven),
                Math.Round(cup.FluidOunces, 9, MidpointRounding.ToEven),
            ]
        );
    }

    [Theory]
    [InlineData(350, 176.6667)]
    [InlineData(-40, -40)]
    [InlineData(212, 100)]
    public void Fahrenheit_to_celsius(double fahrenheit, double celsius) =>
        Assert.Equal(celsius, Temperature.FromFahrenheit(fahrenheit).Celsius, 0.00005);

    [Fact]
    public void A_hundred_and_eighty_celsius_is_356_fahrenheit() => Assert.Equal(356, Temperature.FromCelsius(180).Fahrenheit, 1e-9);

    [Fact]
    public void A_difference_has_no_offset() => Assert.Equal(5, TemperatureDifference.FromFahrenheitDegrees(9).Kelvins, 1e-12);

    [Fact]
    public void Melting_350_pounds_of_ice_takes_50_400_btu() =>
        Assert.Equal(50_400 * 1055.05585262, Energy.FromBtu(350 * 144.0).Joules, 1.0); // Sosland Publishing, Baking Business, on ice as stored cold; factor: NIST SP 811, appendix B.8

    [Fact]
    public void Conversions_come_back_to_a_part_in_a_million_million() =>
        Gen.Double[1e-3, 1e6]
            .Sample(value =>
            {
                var tolerance = value * 1e-12;
                Assert.Equal(value, Mass.FromPounds(value).Pounds, tolerance);
                Assert.Equal(value, Mass.FromOunces(value).Ounces, tolerance);
                Assert.Equal(value, Mass.FromKilograms(value).Kilograms, tolerance);
                Assert.Equal(value, Volume.FromCups(value).Cups, tolerance);
                Assert.Equal(value, Volume.FromTablespoons(value).Tablespoons, tolerance);
                Assert.Equal(value, Volume.FromTeaspoons(value).Teaspoons, tolerance);
                Assert.Equal(value, TemperatureDifference.FromFahrenheitDegrees(value).FahrenheitDegrees, tolerance);
                Assert.Equal(value, Energy.FromBtu(value).Btu, tolerance);
                Assert.Equal(value, AmountOfSubstance.FromMoles(value).Millimoles / 1000, tolerance);
                Assert.Equal(value, Pressure.FromMegapascals(value).Megapascals, tolerance);
            });

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    public void What_is_no_number_is_no_quantity(double value)
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => Mass.FromGrams(value));
        Assert.Throws<ArgumentOutOfRangeException>(() => Volume.FromLitres(value));
        Assert.Throws<ArgumentOutOfRangeException>(() => Energy.FromJoules(value));
        Assert.Throws<ArgumentOutOfRangeException>(() => AmountOfSubstance.FromMoles(value));
        Assert.Throws<ArgumentOutOfRangeException>(() => Pressure.FromPascals(value));
        Assert.Throws<ArgumentOutOfRangeException>(() => TemperatureDifference.FromKelvins(value));
        Assert.Throws<ArgumentOutOfRangeException>(() => Temperature.FromCelsius(value));
    }
}
