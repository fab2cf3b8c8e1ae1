using ClassKit.Content.Diagnostics;

namespace ClassKit.Content.Checking;

/// <summary>What came of checking files and folders.</summary>
/// <param name="Items">What was recognised and checked, in the order met.</param>
/// <param name="Problems">Everything that is wrong with it, and every named path that was not recognised.</param>
public sealed record ContentCheck(IReadOnlyList<CheckedItem> Items, IReadOnlyList<Diagnostic> Problems)
{
    /// <summary>What stands in nobody's way, and is doubtful or good to know.</summary>
    public IReadOnlyList<Diagnostic> Doubts { get; init; } = [];
}
