using ClassKit.Exercises.Deadlines;

namespace ClassKit.UseCases.Grading;

/// <summary>When work was due, settled.</summary>
/// <param name="Moment">The moment; null if work may come at any time.</param>
public sealed record SettledDeadline(DueMoment? Moment)
{
    /// <summary>Work that may come at any time.</summary>
    public static SettledDeadline None { get; } = new((DueMoment?)null);

    /// <summary>True if the instructor named it this time; false if it is as on record.</summary>
    public bool IsNamed { get; init; }

    /// <summary>What was on record before, in earlier grades or in the deal; null for nothing.</summary>
    public DueMoment? OnRecord { get; init; }

    /// <summary>True if what was on record is what students were told when the work was dealt.</summary>
    public bool IsAsDealt { get; init; }
}
