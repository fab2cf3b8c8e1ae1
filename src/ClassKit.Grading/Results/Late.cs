namespace ClassKit.Grading.Results;

/// <summary>That a student's work came late.</summary>
/// <param name="Days">Days begun since it was due, above 0.</param>
/// <param name="Off">The share of the points taken off for it, 0 to 1.</param>
public sealed record Late(int Days, decimal Off)
{
    /// <summary>How long after it was due; zero where a record does not say.</summary>
    public TimeSpan By { get; init; }
}
