namespace ClassKit.Baking;

/// <summary>One ingredient of a batch.</summary>
/// <param name="Ingredient">What.</param>
/// <param name="Percent">Its baker's percentage.</param>
/// <param name="Exact">The computed mass.</param>
/// <param name="Weighed">The mass to weigh: a multiple of the scale's resolution.</param>
public sealed record BatchLine(Ingredient Ingredient, double Percent, Mass Exact, Mass Weighed);
