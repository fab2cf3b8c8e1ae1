namespace ClassKit.Pages.Benches;

/// <summary>One bar of the timeline.</summary>
/// <param name="Label">In full: <c>First rise</c>.</param>
/// <param name="Short">Where the label does not fit: <c>3</c>.</param>
/// <param name="Start">The minute it begins.</param>
/// <param name="End">The minute it ends.</param>
/// <param name="Kind">How it is filled.</param>
internal sealed record TimelineBar(string Label, string Short, int Start, int End, BarKind Kind)
{
    public int Minutes => End - Start;
}
