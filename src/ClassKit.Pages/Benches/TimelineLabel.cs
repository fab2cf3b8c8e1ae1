namespace ClassKit.Pages.Benches;

/// <summary>Where a bar's label stands.</summary>
/// <param name="Text">The words.</param>
/// <param name="Minute">What it is anchored to.</param>
/// <param name="Shift">How far it stands from there, in pixels; to the left below 0.</param>
/// <param name="Anchor">Which part of it stands there: start, middle or end, as SVG has it.</param>
/// <param name="Lane">0 on the bar's own line, 1 on the first line below, and so on.</param>
/// <param name="IsInside">True on the bar itself.</param>
internal sealed record TimelineLabel(string Text, double Minute, double Shift, string Anchor, int Lane, bool IsInside);
