using ClassKit.Terms.Rules;

namespace ClassKit.Terms.Tests.Rules;

public sealed class RoundingTests
{
    // By hand.
    [Theory]
    [InlineData(89.5, 1.0, 90, 89, 90)]
    [InlineData(88.5, 1.0, 89, 88, 88)]
    [InlineData(89.49, 1.0, 89, 89, 89)]
    [InlineData(89.51, 1.0, 90, 90, 90)]
    [InlineData(72.25, 0.5, 72.5, 72.0, 72.0)]
    [InlineData(72.75, 0.5, 73.0, 72.5, 73.0)]
    [InlineData(62.5, 5.0, 65, 60, 60)]
    [InlineData(0, 1.0, 0, 0, 0)]
    [InlineData(100, 1.0, 100, 100, 100)]
    public void A_result_in_the_middle_goes_where_the_rule_says(double percent, double step, double up, double down, double even)
    {
        foreach (var (tie, expected) in new[] { (TieRule.Up, up), (TieRule.Down, down), (TieRule.Even, even) })
            Assert.Equal((decimal)expected, new Rounding((decimal)step, tie).Of((decimal)percent));
    }

    /// <summary>Seven sevenths of 89.5 are 89.5, though no decimal holds a seventh.</summary>
    [Fact]
    public void A_middle_reached_by_sevenths_is_one()
    {
        var percent = Enumerable.Repeat(89.5m / 7, 7).Sum();

        Assert.Equal(90, new Rounding(1, TieRule.Up).Of(percent));
        Assert.Equal(89, new Rounding(1, TieRule.Down).Of(percent));
        Assert.True(new Rounding(1, TieRule.Down).IsTie(percent));
    }

    [Fact]
    public void Without_rounding_a_result_stays() => Assert.Equal(66.66666667m, new Rounding(null, TieRule.Up).Of(200m / 3));
}
