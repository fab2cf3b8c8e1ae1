namespace ClassKit.Terms.Bench;

/// <summary>What one marker saw at the bench.</summary>
/// <param name="Marker">Who, or what the sheet is called.</param>
/// <param name="Places">The place of the level that each criterion reached, by the student's id; <see cref="BenchScale.NotAsked"/> where it
/// is not asked of them.</param>
public sealed record BenchSheet(string Marker, IReadOnlyDictionary<string, IReadOnlyList<int>> Places)
{
    /// <summary>What was written of students, by their ids; none of most.</summary>
    public IReadOnlyDictionary<string, string> Comments { get; init; } = new Dictionary<string, string>();

    /// <summary>
    /// Levels of students of whom there is not one for every criterion yet, null where there is none, by their ids: nothing of theirs
    /// counts.
    /// </summary>
    public IReadOnlyDictionary<string, IReadOnlyList<int?>> Begun { get; init; } = new Dictionary<string, IReadOnlyList<int?>>();

    /// <summary>The level that a student reached in a criterion; null where none is known.</summary>
    public int? LevelOf(string student, int criterion) =>
        (Places.GetValueOrDefault(student) is { } whole ? whole[criterion] : Begun.GetValueOrDefault(student)?[criterion])
            is { } level
                and not BenchScale.NotAsked
            ? level
            : null;

    /// <summary>The sheet without some students, by their ids.</summary>
    public BenchSheet Without(IReadOnlySet<string> students) =>
        this with
        {
            Places = Places.Where(seen => !students.Contains(seen.Key)).ToDictionary(),
            Begun = Begun.Where(seen => !students.Contains(seen.Key)).ToDictionary(),
            Comments = Comments.Where(said => !students.Contains(said.Key)).ToDictionary(),
        };
}
