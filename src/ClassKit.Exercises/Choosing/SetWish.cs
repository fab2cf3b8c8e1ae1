using ClassKit.Exercises.Authoring;

namespace ClassKit.Exercises.Choosing;

/// <summary>What an instructor wants of a set of exercises; whatever is left out does not matter.</summary>
/// <param name="Exercises">Ids of exercises wanted by name, in that order; they are taken whatever else is asked.</param>
/// <param name="Skills">Only exercises of these skills, whatever the letter case; all skills if empty.</param>
/// <param name="Levels">Only exercises of these levels; all levels if empty.</param>
/// <param name="Minutes">The most time that the set may take; filled as well as the exercises allow.</param>
/// <param name="Points">The most points that the set may be worth; filled as well as the exercises allow.</param>
public sealed record SetWish(
    IReadOnlyList<string> Exercises,
    IReadOnlyList<string> Skills,
    IReadOnlyList<ExerciseLevel> Levels,
    int? Minutes,
    decimal? Points
)
{
    /// <summary>No wish at all.</summary>
    public static SetWish None { get; } = new([], [], [], null, null);

    /// <summary>True if nothing is asked.</summary>
    public bool IsNone => IsByName && Exercises.Count == 0;

    /// <summary>True if nothing but names is asked, so that nothing is added to them.</summary>
    public bool IsByName => Skills.Count == 0 && Levels.Count == 0 && Minutes is null && Points is null;
}
