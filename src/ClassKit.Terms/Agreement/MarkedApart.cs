namespace ClassKit.Terms.Agreement;

/// <summary>A student whom two markers saw differently.</summary>
/// <param name="Student">The student's id.</param>
/// <param name="First">The first marker's points.</param>
/// <param name="Second">The second marker's.</param>
/// <param name="Criteria">Where they differ: the criterion, and the place of the level that each saw; the furthest apart first.</param>
public sealed record MarkedApart(
    string Student,
    decimal First,
    decimal Second,
    IReadOnlyList<(string Criterion, int First, int Second)> Criteria
)
{
    /// <summary>The levels between them over all criteria.</summary>
    public int Levels => Criteria.Sum(criterion => Math.Abs(criterion.First - criterion.Second));
}
