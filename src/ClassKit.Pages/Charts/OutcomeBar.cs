using ClassKit.Grading.Results;

namespace ClassKit.Pages.Charts;

/// <summary>One bar of a chart of outcomes.</summary>
/// <param name="Label">What stands beside it.</param>
/// <param name="Counts">How many had each outcome.</param>
/// <param name="Figure">The figure at its end.</param>
public sealed record OutcomeBar(string Label, IReadOnlyDictionary<Outcome, int> Counts, string Figure)
{
    /// <summary>All counts together.</summary>
    public int Total => Counts.Values.Sum();
}
