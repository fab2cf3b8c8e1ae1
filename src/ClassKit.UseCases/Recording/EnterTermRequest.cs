using ClassKit.Content.Terms;
using ClassKit.Records.Storage;

namespace ClassKit.UseCases.Recording;

/// <summary>A term to go on record with its works and marks.</summary>
/// <param name="Record">The record.</param>
/// <param name="Author">Who puts it there, when and why.</param>
/// <param name="Class">What the class is called; null for what its profile calls it.</param>
/// <param name="Plan">The term as it is written down.</param>
/// <param name="Deals">The identities of the deals of each calculation set, one a sitting, by the title of the work, and the points
/// possible.</param>
public sealed record EnterTermRequest(
    TeachingRecord Record,
    Author Author,
    string? Class,
    TermPlan Plan,
    IReadOnlyDictionary<string, SatDeals> Deals
);

/// <summary>The deals of a calculation set.</summary>
/// <param name="OutOf">The points possible; null where nothing has been graded.</param>
/// <param name="Digests">Their identities, one a sitting.</param>
public sealed record SatDeals(decimal? OutOf, IReadOnlyList<string> Digests)
{
    /// <summary>The day on which the first was due; null where nobody has said.</summary>
    public DateOnly? Due { get; init; }
}
