using ClassKit.Exercises.Cohorts;
using ClassKit.Grading.Findings.Refusals;

namespace ClassKit.Workbooks.Bench;

/// <summary>What came of reading a workbook of bench marks.</summary>
/// <param name="Identity">The form that it says it is of; null where it has no table of bench marks.</param>
/// <param name="Strangers">Ids in it that are nobody's of the form.</param>
public sealed record BenchBookReading(string? Identity, IReadOnlyList<string> Strangers)
{
    /// <summary>Who has a row in it, in the order of the rows, each with the name of their team where it says one.</summary>
    public IReadOnlyList<Student> Listed { get; init; } = [];

    /// <summary>Why it could not be opened; null if it could.</summary>
    public Refusal? Refusal { get; init; }

    /// <summary>What was typed in, by the names of the form's fields.</summary>
    public IReadOnlyDictionary<string, string> Fields { get; init; } = new Dictionary<string, string>();
}
