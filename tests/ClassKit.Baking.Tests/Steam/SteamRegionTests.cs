using ClassKit.Baking.Quantities;
using ClassKit.Baking.Steam;

namespace ClassKit.Baking.Tests.Steam;

public sealed class SteamRegionTests
{
    [Theory]
    // IAPWS R7-97(2012), table 15
    [InlineData(0.0035, 300, 0.394913866e2)]
    [InlineData(0.0035, 700, 0.923015898e2)]
    [InlineData(30, 700, 0.542946619e-2)]
    public void Specific_volume_is_that_of_table_15(double megapascals, double kelvin, double cubicMetresPerKilogram) =>
        Assert.Equal(
            cubicMetresPerKilogram,
            SteamRegion.SpecificVolume(Pressure.FromMegapascals(megapascals), Temperature.FromKelvin(kelvin)),
            cubicMetresPerKilogram * 1e-8
        );
}
