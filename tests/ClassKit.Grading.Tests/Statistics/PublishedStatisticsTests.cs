using ClassKit.Grading.Statistics;

namespace ClassKit.Grading.Tests.Statistics;

/// <summary>Item statistics against published data sets and the figures known for them.</summary>
public class PublishedStatisticsTests
{
    // Shares right of the five items as published with the data; correlations, alpha and alpha without an item as R's package ltm prints
    // them for LSAT.
    [Theory]
    [InlineData(0, .924, .3620, .1128, .2754)]
    [InlineData(1, .709, .5668, .1532, .2376)]
    [InlineData(2, .553, .6184, .1728, .2168)]
    [InlineData(3, .763, .5344, .1444, .2459)]
    [InlineData(4, .870, .4354, .1216, .2663)]
    public void The_law_school_items_behave_as_published(
        int item,
        double difficulty,
        double withTotal,
        double withRest,
        double alphaWithout
    )
    {
        var statistics = ItemStatistics.Of(Lsat6.Table)[item];
        Assert.Equal(difficulty, statistics.Difficulty!.Value, 0.0005);
        Assert.Equal(withTotal, statistics.WithTotal!.Value, 0.00006);
        Assert.Equal(withRest, statistics.WithRest!.Value, 0.00006);
        Assert.Equal(alphaWithout, statistics.AlphaWithout!.Value, 0.00006);
    }

    [Fact]
    public void The_law_school_test_is_as_reliable_as_published()
    {
        // 0.2950 by package ltm; the standard error with divisor n - 1 is worked out from the published pattern counts by hand: 1.071310 *
        // (1 - 0.294997), its root.
        var reliability = Reliability.Of(Lsat6.Table)!;
        Assert.Equal(0.294997, reliability.Alpha, 0.000001);
        Assert.Equal(0.8691, reliability.StandardError, 0.00005);
    }

    // 270 of 1000 in each group, the cut inside a group of equal totals: each of those counts by a fraction. Worked out apart from this
    // code with exact fractions.
    [Theory]
    [InlineData(0, .1966)]
    [InlineData(1, .6315)]
    [InlineData(2, .8109)]
    [InlineData(3, .5370)]
    [InlineData(4, .3203)]
    public void The_law_school_items_tell_the_best_from_the_weakest(int item, double discrimination) =>
        Assert.Equal(discrimination, ItemStatistics.Of(Lsat6.Table)[item].Discrimination!.Value, 0.00006);

    // Alpha 0.84 and the columns r.drop and raw_alpha (if dropped) as R's package psych prints them for these data.
    [Theory]
    [InlineData(0, .671, .810)]
    [InlineData(1, .742, .797)]
    [InlineData(2, .561, .828)]
    [InlineData(3, .714, .803)]
    [InlineData(4, .786, .795)]
    [InlineData(5, .265, .864)]
    [InlineData(6, .461, .841)]
    public void The_attitude_questions_behave_as_published(int item, double withRest, double alphaWithout)
    {
        Assert.Equal(0.84314, Reliability.Of(Attitude.Table)!.Alpha, 0.00001);
        var statistics = ItemStatistics.Of(Attitude.Table)[item];
        Assert.Equal(withRest, statistics.WithRest!.Value, 0.0006);
        Assert.Equal(alphaWithout, statistics.AlphaWithout!.Value, 0.0006);
    }

    [Fact]
    public void Alpha_from_variances_is_that_of_the_worked_example() =>
        // Bland and Altman, "Cronbach's alpha", BMJ 314 (1997) 572: ten items, 11.16 and 77.44; 0.95 there. From memory of the paper.
        Assert.Equal(0.951, Reliability.AlphaFrom(10, 11.16, 77.44), 0.0005);
}
