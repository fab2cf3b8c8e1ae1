using ClassKit.Exercises.Cohorts;
using ClassKit.Terms.Rules;

namespace ClassKit.Content.Terms;

/// <summary>A term as it is written down: who, by which rule, which work, and where its marks come from.</summary>
/// <param name="Path">Its file.</param>
/// <param name="Title">What the term is called.</param>
/// <param name="Class">The students.</param>
/// <param name="Rule">The rule.</param>
/// <param name="Works">In order.</param>
/// <param name="Inputs">Every file and folder that the description names.</param>
public sealed record TermPlan(
    string Path,
    string Title,
    Roster Class,
    GradeRule Rule,
    IReadOnlyList<PlannedWork> Works,
    IReadOnlyList<string> Inputs
)
{
    /// <summary>The table of typed marks; null where it names none.</summary>
    public string? Marks { get; init; }
}
