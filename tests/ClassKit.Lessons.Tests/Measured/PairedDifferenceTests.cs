using ClassKit.Lessons.Measured;

namespace ClassKit.Lessons.Tests.Measured;

public sealed class PairedDifferenceTests
{
    /// <summary>
    /// Student (1908), The Probable Error of a Mean: hours of sleep gained by ten patients with two drugs; the interval is R's,
    /// t.test(extra ~ group, paired).
    /// </summary>
    [Fact]
    public void The_interval_of_Students_own_example_is_the_published_one()
    {
        double[] first = [0.7, -1.6, -0.2, -1.2, -0.1, 3.4, 3.7, 0.8, 0.0, 2.0];
        double[] second = [1.9, 0.8, 1.1, 0.1, -0.1, 4.4, 5.5, 1.6, 4.6, 3.4];

        var difference = PairedDifference.Of([.. first.Zip(second, (one, other) => one - other)])!;

        Assert.Equal(10, difference.Pairs);
        Assert.Equal(-1.58, difference.Mean, 9);
        Assert.Equal(-2.4598857633, difference.Interval!.Value.Low, 8);
        Assert.Equal(-0.7001142367, difference.Interval!.Value.High, 8);
        Assert.False(difference.MayBeNone);
    }

    [Fact]
    public void One_pair_has_no_interval_none_no_difference_and_equal_ones_no_width()
    {
        Assert.Null(PairedDifference.Of([]));
        Assert.Null(PairedDifference.Of([4])!.Interval);
        Assert.True(PairedDifference.Of([4])!.MayBeNone);
        Assert.Equal((4.0, 4.0), PairedDifference.Of([4, 4, 4])!.Interval);
    }
}
