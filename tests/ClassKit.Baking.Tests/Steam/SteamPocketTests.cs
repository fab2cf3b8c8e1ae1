using ClassKit.Baking.Quantities;
using ClassKit.Baking.Steam;
using CsCheck;

namespace ClassKit.Baking.Tests.Steam;

public sealed class SteamPocketTests
{
    [Fact]
    public void A_gram_of_water_makes_1_67_litres_of_steam()
    {
        // Spirax Sarco, steam tables: 1.674 m³/kg at 101.325 kPa; IF97: 1.67334
        Assert.Equal(1.674, SteamPocket.SteamFrom(Mass.FromGrams(1), Pressure.Standard).Value.Litres, 0.001);
    }

    [Fact]
    public void A_hollow_of_a_quarter_litre_takes_a_drop_of_water()
    {
        // By hand from the same table: 0.25 / 1.674 = 0.149 g
        Assert.Equal(0.149, SteamPocket.WaterToFill(Volume.FromLitres(0.25), Pressure.Standard).Value.Grams, 0.0005);
    }

    [Fact]
    public void Filling_a_hollow_with_the_steam_of_its_water_fits() =>
        Gen.Select(Gen.Double[0.001, 10], Gen.Double[0, 4000])
            .Sample(
                (litres, metres) =>
                {
                    var pressure = StandardAtmosphere.PressureAt(metres).Value;
                    var water = SteamPocket.WaterToFill(Volume.FromLitres(litres), pressure).Value;
                    Assert.Equal(litres, SteamPocket.SteamFrom(water, pressure).Value.Litres, litres * 1e-12);
                }
            );
}
