namespace ClassKit.Terms.Skills;

/// <summary>When to practise again so that most is left on a named day.</summary>
/// <remarks>
/// Cepeda, Vul, Rohrer, Wixted and Pashler, Spacing effects in learning: a temporal ridgeline of optimal retention, Psychological Science
/// 19 (2008), 1095: the best gap between two times of learning falls from about 20 to 40 % of a test a week away to about 5 to 10 % of one
/// a year away. Between these, and beyond them, the share follows the logarithm of the delay here; no published figure is claimed for that.
/// </remarks>
public static class Spacing
{
    private const double Week = 7;
    private const double Year = 365;
    private const double ShareOfWeek = 0.3;
    private const double ShareOfYear = 0.075;

    /// <summary>The gap before a test that comes so many days after the second time of learning, as a share of those days.</summary>
    /// <param name="days">From the second time to the test, above 0.</param>
    public static double GapShare(double days)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(days);
        var along = Math.Clamp((Math.Log(days) - Math.Log(Week)) / (Math.Log(Year) - Math.Log(Week)), 0, 1);
        return ShareOfWeek * Math.Pow(ShareOfYear / ShareOfWeek, along);
    }

    /// <summary>
    /// The day to practise again: the gap after the last practice that suits what is then left until the test. Never before today, and null
    /// once the test is over.
    /// </summary>
    /// <param name="last">When it was practised last.</param>
    /// <param name="test">The day on which it is wanted.</param>
    /// <param name="today">The day.</param>
    public static DateOnly? PractiseOn(DateOnly last, DateOnly test, DateOnly today)
    {
        if (test <= today)
            return null;
        var between = test.DayNumber - last.DayNumber;
        // The more days are left, the longer gap and rest together: halving finds the rest that makes up the whole.
        var (low, high) = (0.0, (double)between);
        for (var step = 0; step < 60; step++)
        {
            var rest = (low + high) / 2;
            if (rest * (1 + GapShare(rest)) < between)
                low = rest;
            else
                high = rest;
        }
        var on = last.AddDays(Math.Max(1, (int)Math.Round(between - high, MidpointRounding.AwayFromZero)));
        return on < today ? today : on;
    }
}
