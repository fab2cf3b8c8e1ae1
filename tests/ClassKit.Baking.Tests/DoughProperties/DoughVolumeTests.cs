using ClassKit.Baking.DoughProperties;
using ClassKit.Baking.Formulas;
using ClassKit.Baking.Quantities;

namespace ClassKit.Baking.Tests.DoughProperties;

public sealed class DoughVolumeTests
{
    [Fact]
    public void The_dough_of_a_hundred_grams_of_flour_is_about_145_mL_with_its_air()
    {
        // The baking literature's pup loaf: 145 mL as mixed, from 100 g of flour. With 4 % to 12 % of air the gas-free dough is 128 mL to
        // 139 mL.
        var loaf = Doughs.Of(
            "pup_loaf",
            Leavening.Yeast,
            ("bread_flour", 100),
            ("water", 60),
            ("sugar", 6),
            ("vegetable_oil", 3),
            ("salt", 1.5),
            ("fresh_yeast", 2)
        );
        var gasFree = DoughVolume.GasFree(loaf, Mass.FromGrams(loaf.TotalPercent)).Millilitres;
        Assert.InRange(145 - gasFree, 0, 0.12 * 145);
    }

    /// <summary>
    /// The three densities behind it: water of 0.99821 g/mL at 20 °C (IAPWS-95, as tables have it); fat as a US cup of 236.588 mL of oil,
    /// 218 g in USDA SR28 (NDB 04582, 04506, 04518); everything else 1.5 g/mL, from memory: between dry starch near 1.5, sucrose 1.587 and
    /// gluten 1.3, which the handbooks of chemistry print.
    /// </summary>
    [Theory]
    [InlineData("water", 1 / 0.99821, 0.002)]
    [InlineData("vegetable_oil", 236.588 / 218, 0.002)]
    [InlineData("sunflower_oil", 236.588 / 218, 0.002)]
    [InlineData("sugar", 1 / 1.587, 0.04)]
    public void Densities_are_those_that_are_published(string id, double millilitresPerGram, double within) =>
        Assert.Equal(
            millilitresPerGram,
            DoughVolume.GasFree(Doughs.Of("one", Leavening.Steam, (id, 100)), Mass.FromGrams(1)).Millilitres,
            within
        );

    [Fact]
    public void Nothing_takes_no_room() =>
        Assert.Equal(0, DoughVolume.GasFree(Doughs.Of("nothing", Leavening.Steam), Mass.FromGrams(60)).Litres);
}
