using ClassKit.Notes;

namespace ClassKit.UseCases.Recording;

/// <summary>Grades of a term that are frozen now, or would be.</summary>
/// <param name="Title">What the term is called.</param>
/// <param name="Students">How many students they are of.</param>
/// <param name="Number">1 for the first time, 2 for a change, and so on; null where nothing changes.</param>
/// <param name="Changes">What changes of grades that were given out before.</param>
public sealed record FrozenTerm(string Title, int Students, int? Number, IReadOnlyList<FrozenChange> Changes)
{
    /// <summary>How many of these grades may still change, since something of theirs has no mark yet or was not decided on.</summary>
    public int Open { get; init; }

    /// <summary>True where it was only asked what freezing would come to, and nothing was written.</summary>
    public bool IsAsked { get; init; }
}
