using ClassKit.Terms.Bench;
using ClassKit.Terms.Work;

namespace ClassKit.Content.Terms;

/// <summary>A piece of work as the description of a term has it.</summary>
/// <param name="Title">What it is called; unique in its term.</param>
/// <param name="Kind">What it is.</param>
/// <param name="Category">The category of the rule that it counts in.</param>
/// <param name="OutOf">The points possible; null where the graded folders say.</param>
/// <param name="Line">Where it stands in the file.</param>
public sealed record PlannedWork(string Title, WorkKind Kind, string Category, decimal? OutOf, int Line)
{
    /// <summary>The folders that grading made, one a sitting.</summary>
    public IReadOnlyList<string> Graded { get; init; } = [];

    /// <summary>The practical rubric that work at the bench is marked by; null for other work.</summary>
    public string? Rubric { get; init; }

    /// <summary>
    /// Where the marks of work at the bench lie: the first marker's, the second's and those of the resit; null where the term names none.
    /// </summary>
    public (string? First, string? Second, string? Resit) BenchSources { get; init; }

    /// <summary>What was marked at the bench, one a sitting.</summary>
    public IReadOnlyList<BenchMarking> Bench { get; init; } = [];

    /// <summary>Criteria that are not asked of single students, by their ids.</summary>
    public IReadOnlyDictionary<string, IReadOnlySet<string>> NotAsked { get; init; } = new Dictionary<string, IReadOnlySet<string>>();

    /// <summary>What was typed into the table of marks.</summary>
    public IReadOnlyList<TypedMark> Typed { get; init; } = [];
}
