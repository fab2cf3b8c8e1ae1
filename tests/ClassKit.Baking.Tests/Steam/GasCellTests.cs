using ClassKit.Baking.Quantities;
using ClassKit.Baking.Steam;
using CsCheck;

namespace ClassKit.Baking.Tests.Steam;

public sealed class GasCellTests
{
    private static readonly Temperature Bench = Temperature.FromCelsius(30);

    [Fact]
    public void Vapour_does_most_of_the_work_from_30_to_90_C()
    {
        // Calculated from IF97 (IAPWS R7-97) and Charles: (363.15/303.15) × (101325 - 4247)/(101325 - 70182)
        Assert.Equal(3.734, GasCell.Expansion(Bench, Temperature.FromCelsius(90), Pressure.Standard).Value, 0.001);
        Assert.Equal(1.198, GasCell.DryExpansion(Bench, Temperature.FromCelsius(90)), 0.0005);
    }

    [Fact]
    public void A_proofed_loaf_cannot_spring_more_than_its_bubbles_expand()
    {
        // Quoted from the baking literature: the dough of 100 g of flour, 145 mL as mixed, is 515 mL when proofed and springs by another
        // 220 mL (without shortening) to 360 mL (with it) while it warms from 28 °C to 80 °C.
        var gas = 515 - 145;
        var growth = (GasCell.Expansion(Temperature.FromCelsius(28), Temperature.FromCelsius(80), Pressure.Standard).Value - 1) * gas;
        Assert.InRange(growth, 360, 1.25 * 360);
    }

    [Fact]
    public void At_the_boil_a_wet_bubble_has_no_size() =>
        Assert.Equal("at-the-boil", GasCell.Expansion(Bench, Temperature.FromCelsius(100), Pressure.Standard).Why!.Code);

    [Fact]
    public void Higher_up_the_boil_comes_earlier()
    {
        var denver = StandardAtmosphere.PressureAt(1609).Value;
        Assert.Equal("at-the-boil", GasCell.Expansion(Bench, Temperature.FromCelsius(96), denver).Why!.Code);
        Assert.True(GasCell.Expansion(Bench, Temperature.FromCelsius(96), Pressure.Standard).IsPossible);
    }

    [Fact]
    public void Below_freezing_there_is_no_vapour_to_reckon_with() =>
        Assert.Equal("frozen", GasCell.Expansion(Temperature.FromCelsius(-5), Bench, Pressure.Standard).Why!.Code);

    [Fact]
    public void Cooling_undoes_expanding() =>
        Gen.Select(Gen.Double[0, 95], Gen.Double[0, 95])
            .Sample(
                (from, to) =>
                {
                    var there = GasCell.Expansion(Temperature.FromCelsius(from), Temperature.FromCelsius(to), Pressure.Standard).Value;
                    var back = GasCell.Expansion(Temperature.FromCelsius(to), Temperature.FromCelsius(from), Pressure.Standard).Value;
                    Assert.Equal(1, there * back, 1e-12);
                }
            );

    [Fact]
    public void A_bubble_grows_by_as_much_as_its_volumes_differ() =>
        Gen.Select(Gen.Double[0, 90], Gen.Double[0, 90], Gen.Double[1e-4, 1])
            .Sample(
                (from, to, moles) =>
                {
                    var before = GasCell
                        .VolumeOf(AmountOfSubstance.FromMoles(moles), Temperature.FromCelsius(from), Pressure.Standard)
                        .Value;
                    var after = GasCell.VolumeOf(AmountOfSubstance.FromMoles(moles), Temperature.FromCelsius(to), Pressure.Standard).Value;
                    Assert.Equal(
                        GasCell.Expansion(Temperature.FromCelsius(from), Temperature.FromCelsius(to), Pressure.Standard).Value,
                        after / before,
                        1e-9
                    );
                }
            );
}
