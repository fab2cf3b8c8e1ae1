using ClassKit.Lessons.Measured;

namespace ClassKit.Lessons.Tests.Measured;

/// <summary>
/// The modified z-score of Iglewicz and Hoaglin (1993). Scores beside the cases are R's: 0.6745 * (x - median(x)) / mad(x, constant = 1).
/// </summary>
public sealed class FarFromTheRestTests
{
    [Fact]
    public void A_height_that_was_misread_stands_out_and_nothing_else_does()
    {
        // -1.35 0 0.67 -0.67 1.35 0 -32.38 0.67 -0.67 2.02
        double[] heights = [58, 60, 61, 59, 62, 60, 12, 61, 59, 63];

        Assert.Equal([6], heights.Index().Zip(FarFromTheRest.In(heights, 1)).Where(pair => pair.Second).Select(pair => pair.First.Index));
    }

    [Fact]
    public void The_limit_is_three_and_a_half()
    {
        // Median 0, MAD 1: 5.18 scores 3.494, 5.20 scores 3.507.
        Assert.DoesNotContain(true, FarFromTheRest.In([-1, -1, 0, 1, 1, 0, 5.18, -2, 0, 1, -1], 0.01));
        Assert.Contains(true, FarFromTheRest.In([-1, -1, 0, 1, 1, 0, 5.20, -2, 0, 1, -1], 0.01));
    }

    [Fact]
    public void Where_all_read_the_same_one_step_of_the_instrument_is_no_outlier()
    {
        Assert.DoesNotContain(true, FarFromTheRest.In([60, 60, 60, 60, 60, 61], 1));
        Assert.Contains(true, FarFromTheRest.In([60, 60, 60, 60, 60, 70], 1));
    }

    [Fact]
    public void Too_few_say_nothing() => Assert.DoesNotContain(true, FarFromTheRest.In([60, 60, 61, 600], 1));
}
