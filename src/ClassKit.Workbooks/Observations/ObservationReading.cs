using ClassKit.Grading.Findings.Refusals;

namespace ClassKit.Workbooks.Observations;

/// <summary>What came of reading a workbook of observations.</summary>
/// <param name="Identity">The form that it says it is of; null where it is no workbook of observations.</param>
public sealed record ObservationReading(string? Identity)
{
    /// <summary>Why it could not be opened; null if it could.</summary>
    public Refusal? Refusal { get; init; }

    /// <summary>What was typed in, by the names of the form's fields.</summary>
    public IReadOnlyDictionary<string, string> Fields { get; init; } = new Dictionary<string, string>();
}
