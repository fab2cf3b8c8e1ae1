namespace ClassKit.Terms.Bench;

/// <summary>What one marker saw at the bench.</summary>
/// <param name="Marker">Who, or what the sheet is called.</param>
/// <param name="Places">The place of the level that each criterion reached, by the student's id.</param>
public sealed record BenchSheet(string Marker, IReadOnlyDictionary<string, IReadOnlyList<int>> Places)
{
    /// <summary>What was written of students, by their ids; none of most.</summary>
    public IReadOnlyDictionary<string, string> Comments { get; init; } = new Dictionary<string, string>();
}
