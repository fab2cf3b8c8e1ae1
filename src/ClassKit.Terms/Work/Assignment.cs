namespace ClassKit.Terms.Work;

/// <summary>A piece of work that a class is set.</summary>
/// <param name="Id">Unique in its term.</param>
/// <param name="Title">What it is called; unique in its term.</param>
/// <param name="Kind">What it is.</param>
/// <param name="Category">The category of the rule that it counts in.</param>
/// <param name="OutOf">The points possible, above 0; null while nobody knows them: a set of which nothing has been graded.</param>
public sealed record Assignment(string Id, string Title, WorkKind Kind, string Category, decimal? OutOf)
{
    /// <summary>Its weight where works count by points, above 0: of one whose points nobody knows, as of one point.</summary>
    public decimal Weight => OutOf ?? 1;

    /// <summary>The day on which the first sitting was due; null where nobody has said.</summary>
    public DateOnly? Due { get; init; }
}
