using ClassKit.Pages.Charts;

namespace ClassKit.Pages.Tests.Charts;

public sealed class AxisTicksTests
{
    [Theory]
    [InlineData(2.7, 5, new[] { 0, 1.0, 2.0 })]
    [InlineData(100, 8, new[] { 0, 20.0, 40, 60, 80, 100 })]
    [InlineData(0.04, 4, new[] { 0, 0.01, 0.02, 0.03, 0.04 })]
    public void Ticks_are_round_and_within_the_axis(double largest, int wanted, double[] ticks) =>
        Assert.Equal(ticks, AxisTicks.For(largest, wanted));
}
