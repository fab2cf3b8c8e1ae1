using ClassKit.Baking.DoughProperties;
using ClassKit.Baking.Formulas;
using ClassKit.Baking.Quantities;

namespace ClassKit.Baking.Tests.DoughProperties;

public sealed class DoughVolumeTests
{
    [Fact]
    public void The_dough_of_a_hundred_grams_of_flour_is_about_145_mL_with_its_air()
    {
        // The baking literature's pup loaf: 145 mL as mixed, from 100 g of flour. With 4 % to 12 % of air the gas-free dough is 128 mL to 139 mL.
        var loaf = Doughs.Of("pup_loaf", Leavening.Yeast, ("bread_flour", 100), ("water", 60), ("sugar", 6), ("vegetable_oil", 3), ("salt", 1.5), ("fresh_yeast", 2));
        var gasFree = DoughVolume.GasFree(loaf, Mass.FromGrams(loaf.TotalPercent)).Millilitres;
        Assert.InRange(145 - gasFree, 0, 0.12 * 145);
    }

    [Fact]
    public void Nothing_takes_no_room() => Assert.Equal(0, DoughVolume.GasFree(Doughs.Of("nothing", Leavening.Steam), Mass.FromGrams(60)).Litres);
}
