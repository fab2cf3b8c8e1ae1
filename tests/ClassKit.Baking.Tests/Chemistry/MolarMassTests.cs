using ClassKit.Baking.Chemistry;

namespace ClassKit.Baking.Tests.Chemistry;

public sealed class MolarMassTests
{
    // IUPAC conventional atomic weights, summed by hand

    [Theory]
    [InlineData(MolarMass.CarbonDioxide, 44.009)]
    [InlineData(MolarMass.Water, 18.015)]
    [InlineData(MolarMass.SodiumBicarbonate, 84.006)]
    [InlineData(MolarMass.PotassiumBicarbonate, 100.114)]
    [InlineData(MolarMass.AmmoniumBicarbonate, 79.055)]
    [InlineData(MolarMass.LacticAcid, 90.078)]
    [InlineData(MolarMass.PotassiumBitartrate, 188.176)]
    [InlineData(MolarMass.Glucose, 180.156)]
    [InlineData(MolarMass.Sucrose, 342.297)]
    [InlineData(MolarMass.Ethanol, 46.069)]
    public void Molar_masses(double actual, double grams) => Assert.Equal(grams, actual, 0.0006);

    [Fact]
    public void Heating_soda_loses_no_mass() =>
        Assert.Equal(2 * MolarMass.SodiumBicarbonate, MolarMass.SodiumCarbonate + MolarMass.Water + MolarMass.CarbonDioxide, 1e-9);
}
