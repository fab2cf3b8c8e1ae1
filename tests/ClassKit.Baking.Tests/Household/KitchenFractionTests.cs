using ClassKit.Baking.Household;
using CsCheck;

namespace ClassKit.Baking.Tests.Household;

public sealed class KitchenFractionTests
{
    [Theory]
    [InlineData("1 3/4", 1.75)]
    [InlineData("3/4", 0.75)]
    [InlineData("2", 2)]
    [InlineData("0.5", 0.5)]
    [InlineData("1¾", 1.75)]
    [InlineData("½", 0.5)]
    [InlineData("1-1/2", 1.5)]
    [InlineData(" 2 1/4 ", 2.25)]
    public void Kitchen_numbers_are_read(string text, double value)
    {
        Assert.True(KitchenFraction.TryParse(text, out var read));
        Assert.Equal(value, read);
    }

    [Theory]
    [InlineData("")]
    [InlineData("1/0")]
    [InlineData("a cup")]
    [InlineData("1 2")]
    [InlineData("1,5")]
    [InlineData("1/2 3/4")]
    [InlineData("1e400")]
    public void What_is_no_kitchen_number_is_not(string text) => Assert.False(KitchenFraction.TryParse(text, out _));

    [Theory]
    [InlineData(1.75, 4, "1 3/4")]
    [InlineData(0.5, 8, "1/2")]
    [InlineData(2, 4, "2")]
    [InlineData(0, 4, "0")]
    [InlineData(1.96, 4, "2")]
    [InlineData(0.125, 4, "1/4")]
    public void Numbers_are_shown_in_lowest_terms(double value, int denominator, string text) =>
        Assert.Equal(text, KitchenFraction.Show(value, denominator));

    [Fact]
    public void What_is_shown_is_read_back() =>
        Gen.Select(Gen.Int[0, 1000], Doughs.AnyOf(2, 3, 4, 8))
            .Sample(
                (parts, denominator) =>
                {
                    Assert.True(KitchenFraction.TryParse(KitchenFraction.Show((double)parts / denominator, denominator), out var read));
                    Assert.Equal((double)parts / denominator, read, 1e-12);
                }
            );
}
