namespace ClassKit.Terms.Rules;

/// <summary>Something that must be passed whatever the average.</summary>
/// <param name="Category">The category that is looked at.</param>
/// <param name="Criterion">The criterion of its practical rubric that is looked at; null for the category's result.</param>
/// <param name="AtLeast">In percent, above 0 to 100; compared without rounding.</param>
/// <param name="OtherwiseAtMost">The place in the scale of the highest grade where it is not passed.</param>
public sealed record PassLine(string Category, string? Criterion, decimal AtLeast, int OtherwiseAtMost)
{
    /// <summary>What is looked at, as the rule's file names it.</summary>
    public string What => Criterion is null ? Category : $"{Category}: {Criterion}";
}
