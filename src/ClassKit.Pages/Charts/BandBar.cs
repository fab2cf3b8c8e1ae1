using ClassKit.Baking.Quantities;

namespace ClassKit.Pages.Charts;

/// <summary>One bar of a chart of uncertain amounts.</summary>
/// <param name="Label">What stands beside it.</param>
/// <param name="Amount">The amount and its range, 0 or more.</param>
/// <param name="Figure">The amount in words, at the bar's end.</param>
/// <param name="Spoken">Amount and range in words.</param>
/// <param name="IsSolid">In the strong tint; otherwise in the light one.</param>
public sealed record BandBar(string Label, Band<double> Amount, string Figure, string Spoken, bool IsSolid);
