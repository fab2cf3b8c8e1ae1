using ClassKit.Content;

namespace ClassKit.UseCases;

/// <summary>What a use case made, all in memory, or why it made nothing.</summary>
/// <param name="Files">What goes into the output folder; empty when there are problems.</param>
/// <param name="Notes">What the instructor should know of work that succeeded, one sentence each.</param>
/// <param name="Problems">What is wrong with the content or input.</param>
public sealed record Produced(IReadOnlyList<OutputFile> Files, IReadOnlyList<string> Notes, IReadOnlyList<Diagnostic> Problems)
{
    /// <summary>What is added to files of the instructor's when the files are written.</summary>
    public IReadOnlyList<Addition> Additions { get; init; } = [];

    /// <summary>Asked of the output folder as it lies there before anything is written: why these files must not replace what it holds, or null.</summary>
    public Func<string, Diagnostic?>? Objection { get; init; }

    /// <summary>True if there is something to write.</summary>
    public bool Succeeded => Problems.Count == 0;

    /// <summary>The same with more to know, last.</summary>
    public Produced With(IEnumerable<string> notes) => this with { Notes = [.. Notes, .. notes] };

    /// <summary>Nothing, and why.</summary>
    public static Produced Nothing(params IReadOnlyList<Diagnostic> problems) => new([], [], problems);
}
