using ClassKit.Exercises;

namespace ClassKit.Grading;

/// <summary>That a student's work came late.</summary>
/// <param name="Days">Days begun since it was due, above 0.</param>
/// <param name="Off">The share of the points taken off for it, 0 to 1.</param>
public sealed record Late(int Days, decimal Off)
{
    /// <summary>How long after it was due; zero where a record does not say.</summary>
    public TimeSpan By { get; init; }

    /// <summary>How late in the units that people use: <c>1 day and 8 hours</c>.</summary>
    public string Words => By > TimeSpan.Zero ? Elapsed.Words(By) : Days == 1 ? "up to a day" : $"up to {Days} days";
}
