using ClassKit.Content.Checking;
using ClassKit.Content.Diagnostics;

namespace ClassKit.UseCases.Checking;

/// <summary>What came of checking content and drawing its exercises on trial.</summary>
/// <param name="Items">What was recognised and checked, in the order met.</param>
/// <param name="Problems">Everything that is wrong.</param>
/// <param name="Notes">What the author should know of content without a problem.</param>
/// <param name="Exercises">What the draws showed, an entry an exercise; empty when something cannot be read.</param>
public sealed record ContentProof(
    IReadOnlyList<CheckedItem> Items, IReadOnlyList<Diagnostic> Problems, IReadOnlyList<Diagnostic> Notes, IReadOnlyList<ProvedExercise> Exercises)
{
    /// <summary>Every rule for grades, with three invented students taken through it; empty when something cannot be read.</summary>
    public IReadOnlyList<RuleProof> Rules { get; init; } = [];
}
