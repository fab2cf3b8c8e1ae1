using ClassKit.Baking.Quantities;
using ClassKit.Baking.Yeast;
using CsCheck;

namespace ClassKit.Baking.Tests.Yeast;

public sealed class YeastFactorsTests
{
    [Fact]
    public void Thirty_grams_of_fresh_yeast_are_12_of_active_dry_and_9_9_of_instant()
    {
        // cook books, "Yeast conversions: fresh to dry": × 0.4 and × 0.33
        Assert.Equal(12.0, YeastFactors.CookBook.Convert(Mass.FromGrams(30), YeastKind.Fresh, YeastKind.ActiveDry).Value.Grams, 1e-9);
        Assert.Equal(9.9, YeastFactors.CookBook.Convert(Mass.FromGrams(30), YeastKind.Fresh, YeastKind.Instant).Value.Grams, 1e-9);
    }

    [Fact]
    public void Equal_solids_as_the_method_for_yeast_activity_has_them()
    {
        // AACC 89-01.01: 30 %, 92 % and 95 % solids, so 100 g of fresh are 32.61 g and 31.58 g
        Assert.Equal(32.61, YeastFactors.EqualSolids.Convert(Mass.FromGrams(100), YeastKind.Fresh, YeastKind.ActiveDry).Value.Grams, 0.005);
        Assert.Equal(31.58, YeastFactors.EqualSolids.Convert(Mass.FromGrams(100), YeastKind.Fresh, YeastKind.Instant).Value.Grams, 0.005);
    }

    [Fact]
    public void The_older_packet_of_a_quarter_ounce_was_two_thirds_of_an_ounce_of_cake()
    {
        // Common practice, no source
        Assert.Equal(
            2 / 3.0,
            YeastFactors.OlderPackets.Convert(Mass.FromOunces(0.25), YeastKind.ActiveDry, YeastKind.Fresh).Value.Ounces,
            1e-12
        );
    }

    [Fact]
    public void A_third_is_a_third_in_the_open_textbook() =>
        Assert.Equal(10, YeastFactors.OneThird.Convert(Mass.FromGrams(30), YeastKind.Fresh, YeastKind.ActiveDry).Value.Grams, 1e-9); // BC Cook Articulation Committee, Understanding Ingredients for the Canadian Baker, 2015: "about 1:3"

    [Fact]
    public void Converting_there_and_back_changes_nothing() =>
        Gen.Select(Gen.Double[0.1, 1000], Doughs.AnyOf([.. YeastFactors.All]), Gen.Enum<YeastKind>(), Gen.Enum<YeastKind>())
            .Sample(
                (grams, factors, from, to) =>
                    Assert.Equal(
                        grams,
                        factors.Convert(factors.Convert(Mass.FromGrams(grams), from, to).Value, to, from).Value.Grams,
                        grams * 1e-12
                    )
            );
}
