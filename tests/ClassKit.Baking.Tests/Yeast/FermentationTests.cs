using ClassKit.Baking.Chemistry;
using ClassKit.Baking.Quantities;
using ClassKit.Baking.Yeast;

namespace ClassKit.Baking.Tests.Yeast;

public sealed class FermentationTests
{
    // Gay-Lussac's equation with IUPAC atomic weights

    [Fact]
    public void Ten_grams_of_glucose_give_4_886_of_gas_and_5_114_of_alcohol()
    {
        Assert.Equal(4.886, 10 * Fermentation.CarbonDioxidePerHexose, 0.0005);
        Assert.Equal(5.114, 10 * Fermentation.EthanolPerHexose, 0.0005);
        Assert.Equal(1, Fermentation.CarbonDioxidePerHexose + Fermentation.EthanolPerHexose, 1e-9);
    }

    [Fact]
    public void A_gram_of_sucrose_gives_0_5143_of_gas() => Assert.Equal(0.5143, Fermentation.CarbonDioxidePerDisaccharide, 0.00005);

    [Fact]
    public void A_tenth_of_a_mole_of_glucose_gives_nearly_five_litres() =>
        Assert.Equal(
            4.975,
            CarbonDioxide
                .DryVolume(Mass.FromGrams(18.0156 * Fermentation.CarbonDioxidePerHexose), Temperature.FromCelsius(30), Pressure.Standard)
                .Value.Litres,
            0.005
        );

    [Theory]
    [InlineData(0, 248.8)]
    [InlineData(25, 271.6)]
    [InlineData(30, 276.2)]
    public void A_gram_of_glucose_makes_a_quarter_litre_of_gas(double celsius, double millilitres) =>
        Assert.Equal(
            millilitres,
            CarbonDioxide
                .DryVolume(Mass.FromGrams(Fermentation.CarbonDioxidePerHexose), Temperature.FromCelsius(celsius), Pressure.Standard)
                .Value.Millilitres,
            0.1
        );
}
