using ClassKit.Baking.Ingredients;
using ClassKit.Baking.Quantities;

namespace ClassKit.Baking.Altitude;

/// <summary>One ingredient changed for altitude.</summary>
/// <param name="Ingredient">What.</param>
/// <param name="Before">In percent of the original flour.</param>
/// <param name="Range">What is published for it, in percent of the original flour.</param>
/// <param name="Chosen">What the adjusted formula takes of that range.</param>
public sealed record AdjustedLine(Ingredient Ingredient, double Before, PublishedRange Range, double Chosen);
