using ClassKit.Baking.Chemistry;
using ClassKit.Baking.Quantities;
using ClassKit.Baking.Steam;
using CsCheck;

namespace ClassKit.Baking.Tests.Chemistry;

public sealed class DissolvedCarbonDioxideTests
{
    [Theory]
    // Murray and Riley, Deep-Sea Res. 18 (1971) 533, in NIST SRD 106: mole fraction × 10⁴ at 101.325 kPa of gas; the CRC table behind our
    // values claims 2 %
    [InlineData(5, 11.48)]
    [InlineData(10, 9.645)]
    [InlineData(15, 8.174)]
    [InlineData(20, 7.009)]
    [InlineData(25, 6.099)]
    [InlineData(32, 5.150)]
    [InlineData(35, 4.805)]
    public void Water_holds_what_was_measured_by_others(double celsius, double moleFraction)
    {
        var held = DissolvedCarbonDioxide.In(Mass.FromGrams(18.015), Temperature.FromCelsius(celsius), Pressure.Standard);
        Assert.Equal(moleFraction * 1e-4, held.Moles, moleFraction * 1e-4 * 0.025);
    }

    [Fact]
    public void The_first_gas_of_a_dough_stays_in_its_water()
    {
        // Without bubbles to begin with, 100 g of water at 30 °C hold 0.000541 × 100/18.015 = 3.0 mmol under 100 kPa (CRC) before any is
        // left over
        var little = DissolvedCarbonDioxide
            .InBubbles(AmountOfSubstance.FromMoles(0.002), default, Mass.FromGrams(100), Temperature.FromCelsius(30), Pressure.Standard)
            .Value;
        var much = DissolvedCarbonDioxide
            .InBubbles(AmountOfSubstance.FromMoles(0.010), default, Mass.FromGrams(100), Temperature.FromCelsius(30), Pressure.Standard)
            .Value;
        Assert.Equal(0, little.Moles, 1e-12);
        Assert.Equal(0.010 - 0.00300 * (101_325 - 4_247) / 100_000, much.Moles, 0.00001);
    }

    [Fact]
    public void What_is_made_is_in_the_bubbles_or_in_the_water() =>
        Gen.Select(Gen.Double[0, 0.1], Gen.Double[1e-6, 0.01], Gen.Double[0, 200], Gen.Double[0, 95])
            .Sample(
                (made, air, water, celsius) =>
                {
                    var at = Temperature.FromCelsius(celsius);
                    var gas = DissolvedCarbonDioxide
                        .InBubbles(
                            AmountOfSubstance.FromMoles(made),
                            AmountOfSubstance.FromMoles(air),
                            Mass.FromGrams(water),
                            at,
                            Pressure.Standard
                        )
                        .Value.Moles;
                    var dry = Pressure.Standard.Pascals - Saturation.PressureAt(at).Pascals;
                    var dissolved = DissolvedCarbonDioxide
                        .In(Mass.FromGrams(water), at, Pressure.FromPascals(dry * gas / (gas + air)))
                        .Moles;
                    Assert.Equal(made, gas + dissolved, 1e-9);
                }
            );

    [Fact]
    public void Beyond_the_table_there_is_no_answer() =>
        Assert.Throws<ArgumentOutOfRangeException>(() =>
            DissolvedCarbonDioxide.In(Mass.FromGrams(1), Temperature.FromCelsius(101), Pressure.Standard)
        );
}
