using ClassKit.Terms.Skills;

namespace ClassKit.Terms.Tests.Skills;

public sealed class SkillTests
{
    private static readonly DateOnly Day = new(2026, 11, 29);

    /// <summary>R 4: qbeta(c(.1, .5, .9), a, b), with a and b one above what counts.</summary>
    [Theory]
    [InlineData(0, 0, 0.1, 0.5, 0.9)]
    [InlineData(3, 1, 0.416109625380, 0.686189829544, 0.887765041454)]
    [InlineData(8.5, 0.25, 0.753395550559, 0.907213371945, 0.980407775428)]
    [InlineData(0, 20, 0.005004602450, 0.032468221476, 0.103849498053)]
    [InlineData(100, 0, 0.977460035646, 0.993160652158, 0.998957370494)]
    public void Bands_are_the_quantiles_that_R_gives(double shown, double missed, double low, double middle, double high)
    {
        var band = SkillBand.Of(shown, missed);

        Assert.Equal(low, band.Low, 8);
        Assert.Equal(middle, band.Middle, 8);
        Assert.Equal(high, band.High, 8);
    }

    [Fact]
    public void After_thirty_days_an_answer_counts_half_and_what_comes_later_is_not_known_yet()
    {
        var skill = Assert.Single(
            SkillStanding.Of([new("ice", Day.AddDays(-30), 6, 8), new("ice", Day, 1, 1), new("ice", Day.AddDays(1), 0, 50)], Day)
        );

        // 6 / 2 + 1 shown and 2 / 2 missed.
        Assert.Equal(SkillBand.Of(4, 1), skill.Band);
        Assert.Equal(5, skill.Band.Answers, 12);
    }

    [Fact]
    public void The_last_day_on_which_it_was_shown_is_not_that_on_which_it_was_asked()
    {
        var skill = Assert.Single(SkillStanding.Of([new("ice", Day.AddDays(-40), 2, 2), new("ice", Day.AddDays(-5), 0, 3)], Day));
        var never = Assert.Single(SkillStanding.Of([new("gas", Day.AddDays(-5), 0, 3)], Day));

        Assert.Equal((Day.AddDays(-5), 40), (skill.LastAsked, skill.DaysUnshown(Day)));
        Assert.Null(never.DaysUnshown(Day));
    }

    /// <summary>
    /// Cepeda, Vul, Rohrer, Wixted and Pashler (2008), abstract: about 20 to 40 % of a 1-week test delay, about 5 to 10 % of a 1-year one.
    /// </summary>
    [Theory]
    [InlineData(7, 0.20, 0.40)]
    [InlineData(365, 0.05, 0.10)]
    public void The_gap_lies_in_the_published_range(int days, double least, double most) =>
        Assert.InRange(Spacing.GapShare(days), least, most);

    [Fact]
    public void The_share_falls_and_the_gap_grows_with_the_delay()
    {
        var delays = Enumerable.Range(1, 400).Select(days => (double)days).ToList();

        Assert.All(delays.Zip(delays.Skip(1)), pair =>
            Assert.True(
                Spacing.GapShare(pair.First) >= Spacing.GapShare(pair.Second)
                    && pair.First * Spacing.GapShare(pair.First) < pair.Second * Spacing.GapShare(pair.Second)
            )
        );
    }

    [Fact]
    public void Gap_and_rest_make_up_the_days_to_the_test()
    {
        // A week left after a gap of 30 % of it: 9.1 days in all. A year and 7.5 % of it: 392.4.
        Assert.Equal(Day.AddDays(2), Spacing.PractiseOn(Day, Day.AddDays(9), Day));
        Assert.Equal(Day.AddDays(27), Spacing.PractiseOn(Day, Day.AddDays(392), Day));
    }

    [Fact]
    public void What_is_overdue_is_for_today_and_after_the_test_there_is_nothing_to_say()
    {
        Assert.Equal(Day, Spacing.PractiseOn(Day.AddDays(-100), Day.AddDays(5), Day));
        Assert.Null(Spacing.PractiseOn(Day.AddDays(-10), Day, Day));
    }
}
