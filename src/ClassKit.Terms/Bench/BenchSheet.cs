namespace ClassKit.Terms.Bench;

/// <summary>What one marker saw at the bench.</summary>
/// <param name="Marker">Who, or what the sheet is called.</param>
/// <param name="Places">The place of the level that each criterion reached, by the student's id.</param>
public sealed record BenchSheet(string Marker, IReadOnlyDictionary<string, IReadOnlyList<int>> Places)
{
    /// <summary>What was written of students, by their ids; none of most.</summary>
    public IReadOnlyDictionary<string, string> Comments { get; init; } = new Dictionary<string, string>();

    /// <summary>The sheet without some students, by their ids.</summary>
    public BenchSheet Without(IReadOnlySet<string> students) => this with
    {
        Places = Places.Where(seen => !students.Contains(seen.Key)).ToDictionary(),
        Comments = Comments.Where(said => !students.Contains(said.Key)).ToDictionary(),
    };
}
