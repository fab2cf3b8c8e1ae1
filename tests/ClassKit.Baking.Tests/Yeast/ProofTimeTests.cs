using ClassKit.Baking.Chemistry;
using ClassKit.Baking.DoughProperties;
using ClassKit.Baking.Formulas;
using ClassKit.Baking.Quantities;
using ClassKit.Baking.Steam;
using ClassKit.Baking.Yeast;

namespace ClassKit.Baking.Tests.Yeast;

public sealed class ProofTimeTests
{
    private static readonly Temperature Proof = Temperature.FromCelsius(28);

    [Fact]
    public void Doubling_takes_the_gas_of_one_dough_volume()
    {
        // Identity: gas at the rate found, over the time found less the lag and without what the water keeps, fills one more gas-free
        // volume
        var minutes = ProofTime.Minutes(Doughs.Buns, Proof, 2, Pressure.Standard, 1, YeastGasModel.Default).Value;
        var yeast = Mass.FromGrams(100 * 1.5 * 0.95 / Doughs.Buns.TotalPercent);
        var moles =
            YeastGasModel.Default.MolesPerMinute(yeast, Proof, 6 * 0.9998).Typical * (minutes.Typical - YeastGasModel.Default.LagMinutes);
        var inBubbles = moles - DissolvedCarbonDioxide.In(DoughWater.In(Doughs.Buns, Mass.FromGrams(100)), Proof, Pressure.Standard).Moles;
        Assert.Equal(
            DoughVolume.GasFree(Doughs.Buns, Mass.FromGrams(100)).Litres,
            GasCell.VolumeOf(AmountOfSubstance.FromMoles(inBubbles), Proof, Pressure.Standard).Value.Litres,
            1e-9
        );
        Assert.True(minutes.Low < minutes.Typical && minutes.Typical < minutes.High);
    }

    [Fact]
    public void A_leaky_dough_takes_longer()
    {
        var tight = ProofTime.Minutes(Doughs.Buns, Proof, 2, Pressure.Standard, 1, YeastGasModel.Default).Value;
        var leaky = ProofTime.Minutes(Doughs.Buns, Proof, 2, Pressure.Standard, ProofTime.HeldAfterPunching, YeastGasModel.Default).Value;
        var lag = YeastGasModel.Default.LagMinutes;
        Assert.Equal((tight.Typical - lag) / 0.4, leaky.Typical - lag, 1e-9);
    }

    [Fact]
    public void Higher_up_dough_rises_sooner() =>
        Assert.True(
            ProofTime.Minutes(Doughs.Buns, Proof, 2, StandardAtmosphere.PressureAt(2000).Value, 1, YeastGasModel.Default).Value.Typical
                < ProofTime.Minutes(Doughs.Buns, Proof, 2, Pressure.Standard, 1, YeastGasModel.Default).Value.Typical
        );

    [Fact]
    public void What_cannot_rise_is_explained()
    {
        Assert.Equal("no-yeast", Code(Doughs.Popovers, 28, 2, 1));
        Assert.Equal("no-rise", Code(Doughs.Buns, 28, 1, 1));
        Assert.Equal("no-gas-held", Code(Doughs.Buns, 28, 2, 0));
        Assert.Equal("yeast-idle", Code(Doughs.Buns, 59, 2, 1));
        Assert.Equal("not-enough-sugar", Code(Doughs.Buns, 28, 60, 1));

        static string Code(BakersFormula formula, double celsius, double rise, double held) =>
            ProofTime.Minutes(formula, Temperature.FromCelsius(celsius), rise, Pressure.Standard, held, YeastGasModel.Default).Why!.Code;
    }
}
