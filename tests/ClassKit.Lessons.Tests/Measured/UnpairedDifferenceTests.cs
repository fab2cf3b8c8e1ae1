using ClassKit.Lessons.Measured;

namespace ClassKit.Lessons.Tests.Measured;

public sealed class UnpairedDifferenceTests
{
    /// <summary>
    /// Student's hours of sleep (1908) again, as of twenty patients: the interval is R's, t.test(extra ~ group), whose manual prints it to
    /// seven figures; from memory.
    /// </summary>
    [Fact]
    public void The_interval_of_two_groups_is_the_published_one()
    {
        double[] first = [0.7, -1.6, -0.2, -1.2, -0.1, 3.4, 3.7, 0.8, 0.0, 2.0];
        double[] second = [1.9, 0.8, 1.1, 0.1, -0.1, 4.4, 5.5, 1.6, 4.6, 3.4];

        var difference = UnpairedDifference.Of(first, second)!;

        Assert.Equal(-1.58, difference.Mean, 9);
        Assert.Equal(-3.3654832, difference.Interval!.Value.Low, 6);
        Assert.Equal(0.2054832, difference.Interval!.Value.High, 6);
        Assert.True(difference.MayBeNone);
    }

    [Fact]
    public void One_team_has_no_interval_none_no_difference_and_equal_ones_no_width()
    {
        Assert.Null(UnpairedDifference.Of([], [1]));
        Assert.Null(UnpairedDifference.Of([4], [1, 2])!.Interval);
        Assert.True(UnpairedDifference.Of([4], [1, 2])!.MayBeNone);
        Assert.Equal((3.0, 3.0), UnpairedDifference.Of([4, 4], [1, 1, 1])!.Interval);
    }
}
