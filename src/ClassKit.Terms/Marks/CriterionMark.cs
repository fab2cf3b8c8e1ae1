namespace ClassKit.Terms.Marks;

/// <summary>What one criterion of a practical rubric earned.</summary>
/// <param name="Criterion">Its name in the rubric.</param>
/// <param name="Share">Of what the highest level earns, 0 to 1.</param>
public sealed record CriterionMark(string Criterion, decimal Share)
{
    /// <summary>What the level that each marker saw is called, the first marker's first; empty where nobody marked it by levels.</summary>
    public IReadOnlyList<string> Seen { get; init; } = [];

    /// <summary>What the highest level earns, with the criterion's weight; 0 where nobody marked it by levels.</summary>
    public decimal OutOf { get; init; }
}
