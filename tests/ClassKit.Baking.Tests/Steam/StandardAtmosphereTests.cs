using ClassKit.Baking.Steam;

namespace ClassKit.Baking.Tests.Steam;

public sealed class StandardAtmosphereTests
{
    [Theory]
    // US Standard Atmosphere 1976 equation, geopotential metres
    [InlineData(0, 101_325)]
    [InlineData(500, 95_460.8)]
    [InlineData(1000, 89_874.6)]
    [InlineData(1500, 84_556.0)]
    [InlineData(2000, 79_495.2)]
    [InlineData(2500, 74_682.5)]
    [InlineData(3000, 70_108.5)]
    public void Pressure_over_geopotential_height(double metres, double pascals) =>
        Assert.Equal(pascals, StandardAtmosphere.PressureAt(metres, AltitudeKind.Geopotential).Value.Pascals, 0.1);

    [Theory]
    // US Standard Atmosphere 1976, printed table over geometric height (from memory)
    [InlineData(1000, 89_876)]
    [InlineData(2000, 79_501)]
    [InlineData(3000, 70_121)]
    public void Pressure_over_geometric_height(double metres, double pascals) =>
        Assert.Equal(pascals, StandardAtmosphere.PressureAt(metres).Value.Pascals, 1.0);

    [Theory]
    // Table of Colorado State University Extension and USDA, boiling point in °F over feet; computed values agree within 0.4 °F
    [InlineData(0, 212.0)]
    [InlineData(2000, 208.4)]
    [InlineData(5000, 203.0)]
    [InlineData(7500, 198.4)]
    [InlineData(10_000, 194.0)]
    public void Water_boils_earlier_higher_up(double feet, double fahrenheit) =>
        Assert.Equal(fahrenheit, Saturation.BoilingPoint(StandardAtmosphere.PressureAt(feet * 0.3048).Value).Fahrenheit, 0.4);

    [Theory]
    [InlineData(12_000)]
    [InlineData(-1000)]
    [InlineData(double.NaN)]
    public void An_altitude_without_kitchens_is_explained(double metres) =>
        Assert.Equal("altitude-out-of-range", StandardAtmosphere.PressureAt(metres).Why!.Code);
}
