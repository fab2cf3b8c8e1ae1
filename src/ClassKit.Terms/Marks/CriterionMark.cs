namespace ClassKit.Terms.Marks;

/// <summary>What one criterion of a practical rubric earned.</summary>
/// <param name="Criterion">Its name in the rubric.</param>
/// <param name="Share">Of what the highest level earns, 0 to 1.</param>
public sealed record CriterionMark(string Criterion, decimal Share);
