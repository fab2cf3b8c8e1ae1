using ClassKit.Baking.Chemistry;
using ClassKit.Baking.Quantities;

namespace ClassKit.Baking.Tests.Chemistry;

public sealed class LeaveningAcidTests
{
    [Theory]
    // By the definition of AACC 02-32, acid = 100 × soda / value; values as at E. J. Pyler and L. A. Gorton, "Baking Science and
    // Technology", 4th edition, 2008, from memory
    [InlineData("mcp", 1.250)]
    [InlineData("sapp", 1.389)]
    [InlineData("salp", 1.000)]
    [InlineData("cream_of_tartar", 2.222)]
    [InlineData("dcpd", 3.030)]
    [InlineData("sas", 0.962)]
    public void The_acid_for_a_gram_of_soda(string id, double grams) =>
        Assert.Equal(grams, LeaveningAcid.All.Single(acid => acid.Id == id).For(Mass.FromGrams(1)).Value.Grams, 0.0005);

    [Fact]
    public void Stoichiometry_gives_the_published_2_24_parts_of_cream_of_tartar()
    {
        // J. Smith, L. Hong-Shum, Food Additives Data Book (Blackwell): 2.24 parts of tartrate per part of soda
        Assert.Equal(100 / 2.24, LeaveningAcid.Stoichiometric(1, MolarMass.PotassiumBitartrate), 0.05);
    }

    [Fact]
    public void Lactic_acid_neutralises_93_3_of_soda() => Assert.Equal(93.3, LeaveningAcid.LacticAcid.NeutralizingValue, 0.05); // calculated from IUPAC atomic weights: 100 × 84.006 / 90.078

    [Theory]
    // H. McGee, On Food and Cooking (2004), "The acid components of baking powders"
    [InlineData("cream_of_tartar", ReleaseKind.AtMixing, null)]
    [InlineData("mcp", ReleaseKind.AtMixing, null)]
    [InlineData("sapp", ReleaseKind.AfterMixing, null)]
    [InlineData("sas", ReleaseKind.MostlyOnHeating, null)]
    [InlineData("salp", ReleaseKind.OnHeating, 38.0)]
    [InlineData("dcpd", ReleaseKind.OnHeating, 57.0)]
    public void When_an_acid_acts(string id, ReleaseKind release, double? from)
    {
        var acid = LeaveningAcid.All.Single(acid => acid.Id == id);
        Assert.Equal(release, acid.Release);
        Assert.Equal(from, acid.HeatsFrom?.Low);
    }

    [Fact]
    public void The_acid_tells_its_steps() =>
        Assert.Equal(
            "acid = 100 × soda / neutralising value = 100 × 1 g / 80 = 1.25 g",
            LeaveningAcid.MonocalciumPhosphate.For(Mass.FromGrams(1)).Explanation!.Steps[0].ToString()
        );

    [Fact]
    public void A_kitchen_rule_is_no_stoichiometry()
    {
        // "1/4 tsp soda + 5/8 tsp cream of tartar", with USDA SR28 teaspoons of 4.6 g and 3.0 g, falls short of acid
        var mixed = Neutralization.Of(Mass.FromGrams(4.6 / 4), Mass.FromGrams(3.0 * 5 / 8), LeaveningAcid.CreamOfTartar).Value;
        Assert.True(mixed.SodaLeft.Grams > 0.2 * 4.6 / 4);
    }
}
