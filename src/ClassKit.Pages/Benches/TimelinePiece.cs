namespace ClassKit.Pages.Benches;

/// <summary>Bars of a row that share a label: one, or several in which a number each has no room.</summary>
/// <param name="Bars">In order of time; one or more.</param>
/// <param name="Label">Null where they have nothing to say.</param>
internal sealed record TimelinePiece(IReadOnlyList<TimelineBar> Bars, TimelineLabel? Label);
