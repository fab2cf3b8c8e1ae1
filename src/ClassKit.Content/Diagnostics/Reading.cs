using System.Diagnostics.CodeAnalysis;

namespace ClassKit.Content.Diagnostics;

/// <summary>A model read from authored content, or everything that is wrong with it.</summary>
/// <typeparam name="T">The model.</typeparam>
/// <param name="Model">The model; null exactly when there are problems.</param>
/// <param name="Problems">Every problem found, in file order; empty when the model is there.</param>
public sealed record Reading<T>(T? Model, IReadOnlyList<Diagnostic> Problems)
    where T : class
{
    /// <summary>What stands in nobody's way, and is doubtful or good to know, in file order.</summary>
    public IReadOnlyList<Diagnostic> Doubts { get; init; } = [];

    /// <summary>True when the model can be used.</summary>
    [MemberNotNullWhen(true, nameof(Model))]
    public bool Succeeded => Model is not null && Problems.Count == 0;
}
