using ClassKit.Baking.Chemistry;
using ClassKit.Baking.Quantities;

namespace ClassKit.Baking.Tests.Chemistry;

public sealed class BakingPowderTests
{
    [Fact]
    public void Twelve_percent_of_gas_take_22_9_percent_of_soda() =>
        Assert.Equal(0.229, BakingPowder.SodaShare(BakingPowder.UnitedStatesMinimumShare).Value, 0.0005); // stoichiometry on the trade's 12 %

    [Fact]
    public void Ten_grams_at_twelve_percent_give_two_thirds_of_a_litre()
    {
        // 1.20 g of carbon dioxide, 0.667 L at 25 °C and 101325 Pa, calculated from CODATA 2018
        var gas = BakingPowder.AvailableCarbonDioxide(Mass.FromGrams(10), 0.12).Value;
        Assert.Equal(1.20, gas.Grams, 1e-12);
        Assert.Equal(0.667, CarbonDioxide.DryVolume(gas, Temperature.FromCelsius(25), Pressure.Standard).Value.Litres, 0.0005);
    }

    [Fact]
    public void A_powder_of_soda_pyrophosphate_and_starch_has_14_percent()
    {
        // 30 g of soda, 30/0.72 = 41.67 g of SAPP, starch to 112.2 g: 30 × 0.5239 / 112.2, calculated
        var acid = LeaveningAcid.SodiumAcidPyrophosphate.For(Mass.FromGrams(30)).Value;
        Assert.Equal(41.67, acid.Grams, 0.005);
        Assert.Equal(
            0.140,
            BakingPowder
                .AvailableShare(
                    Mass.FromGrams(30),
                    acid,
                    LeaveningAcid.SodiumAcidPyrophosphate,
                    Mass.FromGrams(112.2) - Mass.FromGrams(30) - acid
                )
                .Value,
            0.0005
        );
    }

    [Fact]
    public void Self_rising_flour_has_at_least_0_954_grams_of_soda()
    {
        // 21 CFR 137.180: not less than 0.5 % of carbon dioxide
        Assert.Equal(0.954, SelfRisingFlour.MinimumSodaPer100Grams.Grams, 0.0005);
    }

    [Fact]
    public void Replacing_soda_and_back_gives_the_same_soda()
    {
        var powder = BakingPowder.InPlaceOfSoda(Mass.FromGrams(4.6), 0.12).Value;
        Assert.Equal(4.6, BakingPowder.SodaInPlaceOf(powder, 0.12).Value.Grams, 1e-12);
        Assert.Equal(20.08, powder.Grams, 0.01); // by hand: 4.6 × 0.5239 / 0.12
    }

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(-0.1)]
    public void A_powder_without_gas_replaces_nothing(double share) =>
        Assert.Equal("no-available-gas", BakingPowder.InPlaceOfSoda(Mass.FromGrams(1), share).Why!.Code);

    [Fact]
    public void Nothing_is_no_powder() =>
        Assert.Equal("no-powder", BakingPowder.AvailableShare(default, default, LeaveningAcid.CreamOfTartar, default).Why!.Code);

    [Theory]
    // 21 CFR 137.180: at least 0.5 % of carbon dioxide, at most 4.5 parts of acid and soda. By hand: 1.2 g of soda give 0.6287 g of gas in
    // 104.2 g, 0.603 %
    [InlineData(1.2, 1.5, true, true)]
    [InlineData(0.9, 1.125, false, true)]
    [InlineData(2.1, 2.625, true, false)]
    public void Self_rising_flour_is_held_against_the_law(double soda, double acid, bool gas, bool limit)
    {
        var flour = SelfRisingFlour
            .Of(Mass.FromGrams(100), Mass.FromGrams(soda), Mass.FromGrams(acid), LeaveningAcid.MonocalciumPhosphate, Mass.FromGrams(1.5))
            .Value;
        Assert.Equal((gas, limit), (flour.HasGasEnough, flour.IsWithinLimit));
    }
}
