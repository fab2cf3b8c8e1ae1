using ClassKit.Baking.Altitude;
using ClassKit.Baking.Quantities;
using ClassKit.Baking.Steam;
using CsCheck;

namespace ClassKit.Baking.Tests.Steam;

public sealed class SaturationTests
{
    [Theory]
    // IAPWS R7-97(2012), table 35
    [InlineData(300, 0.353658941e-2)]
    [InlineData(500, 0.263889776e1)]
    [InlineData(600, 0.123443146e2)]
    public void Saturation_pressure_is_that_of_table_35(double kelvin, double megapascals) =>
        Assert.Equal(megapascals, Saturation.PressureAt(Temperature.FromKelvin(kelvin)).Megapascals, megapascals * 1e-8);

    [Theory]
    // IAPWS R7-97(2012), table 36
    [InlineData(0.1, 372.755919)]
    [InlineData(1, 453.035632)]
    [InlineData(10, 584.149488)]
    public void Saturation_temperature_is_that_of_table_36(double megapascals, double kelvin) =>
        Assert.Equal(kelvin, Saturation.BoilingPoint(Pressure.FromMegapascals(megapascals)).Kelvin, kelvin * 1e-8);

    [Theory]
    // Steam tables (IAPWS-IF97), saturated water by temperature
    [InlineData(50, 12.027, 0.001)]
    [InlineData(90, 2.3591, 0.0002)]
    [InlineData(95, 1.9806, 0.0002)]
    // "NIST table 1.6718", from memory; IF97 itself gives 1.67190
    [InlineData(100, 1.6718, 0.0005)]
    public void Saturated_vapour_takes_the_room_of_the_steam_tables(double celsius, double litresPerGram, double tolerance) =>
        Assert.Equal(litresPerGram, Saturation.VapourLitresPerGram(Temperature.FromCelsius(celsius)), tolerance);

    [Fact]
    public void At_95_C_the_vapour_has_0_0846_MPa() =>
        Assert.Equal(84_609, Saturation.PressureAt(Temperature.FromCelsius(95)).Pascals, 5.0); // Steam tables: 0.08461 MPa

    [Fact]
    public void Steam_gives_up_2257_joules_a_gram() =>
        Assert.Equal(2256.66, Saturation.HeatToEvaporateGram(Saturation.BoilingPoint(Pressure.Standard)).Joules, 1.0); // Spirax Sarco, steam tables, at 101.325 kPa

    [Fact]
    public void The_two_directions_of_the_line_agree() =>
        Gen.Double[0.01, 370]
            .Sample(celsius =>
            {
                var there = Saturation.PressureAt(Temperature.FromCelsius(celsius));
                Assert.Equal(celsius, Saturation.BoilingPoint(there).Celsius, 1e-6);
            });

    [Fact]
    public void Off_the_line_there_is_no_answer()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => Saturation.PressureAt(Temperature.FromCelsius(-1)));
        Assert.Throws<ArgumentOutOfRangeException>(() => Saturation.BoilingPoint(Pressure.FromPascals(600)));
        Assert.Throws<ArgumentOutOfRangeException>(() => Saturation.VapourLitresPerGram(Temperature.FromCelsius(351)));
    }

    [Fact]
    public void Another_equation_for_the_same_line_agrees_to_a_hundredth_of_a_percent() =>
        Gen.Double[1, 350]
            .Sample(celsius =>
            {
                // W. Wagner, A. Pruss, IAPWS SR1-86(1992), equation 1: coefficients from memory
                double[] a = [-7.85951783, 1.84408259, -11.7866497, 22.6807411, -15.9618719, 1.80122502];
                double[] powers = [1, 1.5, 3, 3.5, 4, 7.5];
                var kelvin = celsius + 273.15;
                var far = 1 - kelvin / 647.096;
                var megapascals =
                    22.064 * Math.Exp(647.096 / kelvin * a.Zip(powers, (factor, power) => factor * Math.Pow(far, power)).Sum());
                Assert.Equal(megapascals, Saturation.PressureAt(Temperature.FromCelsius(celsius)).Megapascals, megapascals * 2e-4);
            });

    [Theory]
    // Table of Colorado State University Extension and USDA, °F over feet
    [InlineData(2000, 208.4)]
    [InlineData(5000, 203.0)]
    [InlineData(10_000, 194.0)]
    public void A_kitchen_knows_where_its_water_boils(double feet, double fahrenheit) =>
        Assert.Equal(fahrenheit, BoilingWater.At(feet * 0.3048).Value.Fahrenheit, 0.4);
}
