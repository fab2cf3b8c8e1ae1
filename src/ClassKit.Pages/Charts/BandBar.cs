using ClassKit.Baking.Quantities;

namespace ClassKit.Pages.Charts;

/// <summary>One row of a chart of uncertain amounts: a whole, and within it the part that counts.</summary>
/// <param name="Label">What stands beside it.</param>
/// <param name="Made">The whole and its range, 0 or more, in the light tint; null where it is not known or not shown.</param>
/// <param name="Held">The part and its range, in the strong tint within the whole; null where nobody can say.</param>
/// <param name="Figure">The part in words, at the row's end.</param>
/// <param name="Of">The whole in words behind it; empty where none is shown.</param>
/// <param name="Spoken">Both with their ranges, in words.</param>
public sealed record BandBar(string Label, Band<double>? Made, Band<double>? Held, string Figure, string Of, string Spoken);
