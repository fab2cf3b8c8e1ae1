using ClassKit.Content.Checking;
using ClassKit.Content.Diagnostics;

namespace ClassKit.UseCases.Checking;

/// <summary>What came of checking content and drawing its exercises on trial.</summary>
/// <param name="Items">What was recognised and checked, in the order met.</param>
/// <param name="Problems">Everything that stands in the way.</param>
/// <param name="Notes">What the author should know besides.</param>
/// <param name="Exercises">What the draws showed, an entry an exercise; without those that cannot be read.</param>
public sealed record ContentProof(
    IReadOnlyList<CheckedItem> Items,
    IReadOnlyList<Diagnostic> Problems,
    IReadOnlyList<Diagnostic> Notes,
    IReadOnlyList<ProvedExercise> Exercises
)
{
    /// <summary>What can be used as it is, and is most likely not what was meant.</summary>
    public IReadOnlyList<Diagnostic> Doubts { get; init; } = [];

    /// <summary>What is as its author most likely meant it, for whoever asks what was made of it.</summary>
    public IReadOnlyList<Diagnostic> Fine { get; init; } = [];

    /// <summary>Every rule for grades, with three invented students taken through it.</summary>
    public IReadOnlyList<RuleProof> Rules { get; init; } = [];
}
