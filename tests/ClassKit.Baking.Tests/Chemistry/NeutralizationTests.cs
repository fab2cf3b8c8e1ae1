using ClassKit.Baking.Chemistry;
using ClassKit.Baking.Quantities;
using CsCheck;

namespace ClassKit.Baking.Tests.Chemistry;

public sealed class NeutralizationTests
{
    [Fact]
    public void Five_grams_of_soda_with_acid_to_spare_give_2_62_grams_of_gas()
    {
        // Calculated from IUPAC atomic weights: 5 × 44.009 / 84.006; as ideal gas at 25 °C, 101325 Pa: 1.456 L
        var mixed = Neutralization.Of(Mass.FromGrams(5), Mass.FromGrams(100), LeaveningAcid.CreamOfTartar).Value;
        Assert.Equal(2.619, mixed.CarbonDioxide.Grams, 0.0005);
        Assert.Equal(
            1.456,
            CarbonDioxide.DryVolume(mixed.CarbonDioxide, Temperature.FromCelsius(25), Pressure.Standard).Value.Litres,
            0.0005
        );
        Assert.Equal(0, mixed.SodaLeft.Grams);
    }

    [Theory]
    // A gram of soda, fully acidified, as ideal gas at 101325 Pa, calculated from CODATA 2018 and IUPAC weights
    [InlineData(0, 266.8)]
    [InlineData(25, 291.2)]
    [InlineData(30, 296.1)]
    public void A_gram_of_soda_fills_a_glass(double celsius, double millilitres) =>
        Assert.Equal(
            millilitres,
            CarbonDioxide
                .DryVolume(Mass.FromGrams(BakingSoda.CarbonDioxideByAcid), Temperature.FromCelsius(celsius), Pressure.Standard)
                .Value.Millilitres,
            0.1
        );

    [Fact]
    public void A_cup_of_yogurt_neutralises_two_grams_of_soda()
    {
        // 245 g (USDA SR28) at 0.9 % of lactic acid, one hydrogen each: 2.06 g of soda, calculated
        Assert.Equal(2.06, LeaveningAcid.LacticAcid.SodaFor(Mass.FromGrams(245 * 0.009)).Value.Grams, 0.005);
    }

    [Fact]
    public void Soda_is_27_percent_sodium()
    {
        // USDA SR28: 27 360 mg of sodium in 100 g of baking soda
        Assert.Equal(0.27360, 22.990 / MolarMass.SodiumBicarbonate, 0.0002);
    }

    [Fact]
    public void Heat_alone_gives_half_the_gas() => Assert.Equal(0.2619, BakingSoda.CarbonDioxideByHeat, 0.00005); // 2 NaHCO3 → Na2CO3 + H2O + CO2, IUPAC atomic weights

    [Fact]
    public void The_steps_give_back_what_was_mixed()
    {
        // By hand: 2 g of cream of tartar neutralise 0.9 g of soda
        var steps = Neutralization.Of(Mass.FromGrams(1), Mass.FromGrams(2), LeaveningAcid.CreamOfTartar).Value.Explanation.Steps;
        Assert.Equal("soda left = soda - soda used = 1 g - 0.9 g = 0.1 g", steps[2].ToString());
        Assert.Equal("carbon dioxide = soda used × 44.009 / 84.006 = 0.9 g × 44.009 / 84.006 = 0.471 g", steps[4].ToString());
    }

    [Fact]
    public void Masses_balance_whatever_is_mixed() =>
        Gen.Select(Gen.Double[0, 100], Gen.Double[0, 100], Doughs.AnyOf([.. LeaveningAcid.All]))
            .Sample(
                (soda, acid, kind) =>
                {
                    var mixed = Neutralization.Of(Mass.FromGrams(soda), Mass.FromGrams(acid), kind).Value;
                    Assert.Equal(soda, (mixed.SodaUsed + mixed.SodaLeft).Grams, 1e-9);
                    Assert.Equal(acid, (mixed.AcidUsed + mixed.AcidLeft).Grams, 1e-9);
                    Assert.True(mixed.SodaLeft.Grams < 1e-9 || mixed.AcidLeft.Grams < 1e-9);
                    Assert.True(mixed.SodaLeft.Grams > -1e-9 && mixed.AcidLeft.Grams > -1e-9);
                }
            );
}
