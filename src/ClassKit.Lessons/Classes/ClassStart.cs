namespace ClassKit.Lessons.Classes;

/// <summary>What the clock on the wall says as a class begins.</summary>
/// <param name="At">The local time of day, to the minute.</param>
/// <param name="CountsTwelve">True if the class reads clocks with am and pm; false for hours from 0 to 23.</param>
public sealed record ClassStart(TimeOnly At, bool CountsTwelve)
{
    /// <summary>What the clock says at a minute of the class; it runs on past midnight, and back before it.</summary>
    /// <param name="minute">Since the beginning of the class; below 0 before it.</param>
    public TimeOnly After(int minute) => At.AddMinutes(minute);
}
