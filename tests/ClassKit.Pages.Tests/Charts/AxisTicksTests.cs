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

    /// <summary>By hand: what is drawn lies between the first and the last, and no tick is finer than what is read off.</summary>
    [Theory]
    [InlineData(71, 138, 4, 1, new[] { 60, 80.0, 100, 120, 140 })]
    [InlineData(53.4, 57.1, 4, 0.1, new[] { 53, 54.0, 55, 56, 57, 58 })]
    [InlineData(60, 60, 4, 1, new[] { 60, 61.0 })]
    [InlineData(99, 100, 4, 1, new[] { 99, 100.0 })]
    public void Ticks_around_measurements_are_round_and_enclose_them(double low, double high, int wanted, double finest, double[] ticks) =>
        Assert.Equal(ticks, AxisTicks.Around(low, high, wanted, finest));
}
