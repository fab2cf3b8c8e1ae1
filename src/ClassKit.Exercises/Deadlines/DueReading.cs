namespace ClassKit.Exercises.Deadlines;

/// <summary>What had to be decided to make a moment of a day and a time.</summary>
public enum DueReading
{
    /// <summary>Nothing: there is one such moment.</summary>
    Plain,

    /// <summary>Nobody had said in which zone; UTC was taken.</summary>
    ZoneAssumed,

    /// <summary>Clocks are put forward over that time, so that it does not occur; it was moved on by as much.</summary>
    Skipped,

    /// <summary>Clocks are put back over that time, so that it occurs twice; the later one was taken, for the student.</summary>
    Twice,
}
