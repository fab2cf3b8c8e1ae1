namespace ClassKit.Terms.Rules;

/// <summary>How a result in percent is rounded before it is looked up in the scale.</summary>
/// <param name="Step">In percent, above 0 and such that 100 is a whole number of steps; null for no rounding.</param>
/// <param name="Tie">Where the middle between two steps goes.</param>
public sealed record Rounding(decimal? Step, TieRule Tie)
{
    /// <summary>
    /// Results are compared with so many decimals of a step, or of a percent: thirds and sevenths have no last digit, and what differs by
    /// less is the same.
    /// </summary>
    public const int Digits = 8;

    /// <summary>A percentage as it is compared with lines and with the scale.</summary>
    public static decimal Compared(decimal percent) => Math.Round(percent, Digits, MidpointRounding.AwayFromZero);

    /// <summary>True if a percentage lies in the middle between two steps.</summary>
    public bool IsTie(decimal percent) => Step is { } step && Compared(percent / step) % 1 == 0.5m;

    /// <summary>The rounded percentage.</summary>
    public decimal Of(decimal percent)
    {
        if (Step is not { } step)
            return Compared(percent);
        var steps = Compared(percent / step);
        var below = Math.Floor(steps);
        var isUp =
            steps - below == 0.5m
                ? Tie switch
                {
                    TieRule.Up => true,
                    TieRule.Down => false,
                    TieRule.Even => below % 2 != 0,
                }
                : steps - below > 0.5m;
        return (below + (isUp ? 1 : 0)) * step;
    }
}
