namespace ClassKit.Pages.Benches;

/// <summary>One row of the timeline.</summary>
/// <param name="Heading">A heading above it, where a new group begins; empty otherwise.</param>
/// <param name="Label">What stands left of its bars.</param>
/// <param name="Detail">What stands below the label, such as the teams; may be empty.</param>
/// <param name="Bars">In order of time.</param>
internal sealed record TimelineRow(string Heading, string Label, string Detail, IReadOnlyList<TimelineBar> Bars)
{
    /// <summary>What stands before the label: the letter by which bars of ovens tell of a bread; empty for other rows.</summary>
    public string Letter { get; init; } = "";
}
