namespace ClassKit.Pages.Benches;

/// <summary>One row of the timeline.</summary>
/// <param name="Heading">A heading above it, where a new group begins; empty otherwise.</param>
/// <param name="Label">What stands above its bars.</param>
/// <param name="Bars">In order of time.</param>
internal sealed record TimelineRow(string Heading, string Label, IReadOnlyList<TimelineBar> Bars);
