namespace ClassKit.Exercises.Deadlines;

/// <summary>Lengths of time in the units that people use.</summary>
public static class Elapsed
{
    /// <summary>
    /// The two largest units: <c>1 day and 8 hours</c>, <c>2 hours and 5 minutes</c>, <c>less than a minute</c>; a day is 24 hours.
    /// </summary>
    /// <param name="time">Not negative.</param>
    public static string Words(TimeSpan time)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(time, TimeSpan.Zero);
        return (time.Days, time.Hours, time.Minutes) switch
        {
            (0, 0, 0) => "less than a minute",
            (0, 0, var minutes) => Count(minutes, "minute"),
            (0, var hours, var minutes) => And(Count(hours, "hour"), minutes, "minute"),
            (var days, var hours, _) => And(Count(days, "day"), hours, "hour"),
        };
    }

    private static string And(string first, int more, string unit) => more == 0 ? first : $"{first} and {Count(more, unit)}";

    private static string Count(int count, string unit) => count == 1 ? $"1 {unit}" : $"{count} {unit}s";
}
