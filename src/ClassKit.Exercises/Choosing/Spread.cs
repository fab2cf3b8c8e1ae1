using ClassKit.Exercises.Authoring;

namespace ClassKit.Exercises.Choosing;

/// <summary>Different sets of equal weight for the students of a class.</summary>
/// <param name="Sets">The ids of each student's exercises, by student id.</param>
/// <param name="Exercises">Every exercise that is in a set, in the pool's order.</param>
/// <param name="Different">How many sets differ.</param>
/// <param name="Points">What every set is worth.</param>
/// <param name="LeastMinutes">How long the shortest set takes.</param>
/// <param name="MostMinutes">How long the longest set takes.</param>
public sealed record Spread(
    IReadOnlyDictionary<string, IReadOnlyList<string>> Sets,
    IReadOnlyList<Exercise> Exercises,
    int Different,
    decimal Points,
    int LeastMinutes,
    int MostMinutes
)
{
    /// <summary>
    /// How far the sets are apart in what students can be expected to earn, in points; null where they were not balanced by it.
    /// </summary>
    public double? ExpectedApart { get; init; }

    /// <summary>
    /// Of the exercises that sets were chosen from, those of which too little is known to balance sets by; empty where nothing was asked of
    /// what they proved.
    /// </summary>
    public IReadOnlyList<Exercise> NotKnown { get; init; } = [];
}
