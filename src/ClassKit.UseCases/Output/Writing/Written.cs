using ClassKit.Content.Diagnostics;
using ClassKit.Notes;

namespace ClassKit.UseCases.Output.Writing;

/// <summary>What came of writing an output folder.</summary>
/// <param name="Files">How many files the folder has of ours.</param>
/// <param name="Notes">What the instructor should know.</param>
/// <param name="Problems">Why nothing was written; empty if all was.</param>
public sealed record Written(int Files, IReadOnlyList<Note> Notes, IReadOnlyList<Diagnostic> Problems)
{
    /// <summary>True if some of the files are in place and the next run will put the others there.</summary>
    public bool IsCutOff { get; init; }

    /// <summary>The full paths of the files to open first.</summary>
    public IReadOnlyList<string> Open { get; init; } = [];

    /// <summary>What the instructor may want to do next.</summary>
    public IReadOnlyList<Remedy> Remedies { get; init; } = [];

    /// <summary>True if all was written.</summary>
    public bool Succeeded => Problems.Count == 0;

    internal static Written Nothing(params IReadOnlyList<Diagnostic> problems) => new(0, [], problems);
}
