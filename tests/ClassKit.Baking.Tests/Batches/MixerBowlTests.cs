using ClassKit.Baking.Batches;
using ClassKit.Baking.Quantities;

namespace ClassKit.Baking.Tests.Batches;

public sealed class MixerBowlTests
{
    [Theory]
    // By hand
    [InlineData(28_470, 10_000, 3, 9_490)]
    [InlineData(10_000, 10_000, 1, 10_000)]
    [InlineData(10_001, 10_000, 2, 5_000.5)]
    public void A_dough_is_divided_into_the_fewest_equal_batches(double dough, double bowl, int batches, double each)
    {
        var divided = MixerBowl.Divide(Mass.FromGrams(dough), Mass.FromGrams(bowl)).Value;
        Assert.Equal(batches, divided.Batches);
        Assert.Equal(each, divided.Each.Grams, 1e-9);
    }

    [Fact]
    public void No_bowl_holds_nothing() => Assert.Equal("no-bowl", MixerBowl.Divide(Mass.FromGrams(500), default).Why!.Code);

    [Fact]
    public void No_dough_needs_no_bowl() => Assert.Equal("no-dough", MixerBowl.Divide(default, Mass.FromGrams(500)).Why!.Code);

    [Fact]
    public void A_thimble_for_a_bowl_is_noticed() =>
        Assert.Equal("too-many-batches", MixerBowl.Divide(Mass.FromKilograms(500), Mass.FromGrams(1)).Why!.Code);
}
