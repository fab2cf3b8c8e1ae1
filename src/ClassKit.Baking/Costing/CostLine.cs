using ClassKit.Baking.Ingredients;
using ClassKit.Baking.Quantities;

namespace ClassKit.Baking.Costing;

/// <summary>What one ingredient of a batch costs.</summary>
/// <param name="Ingredient">What.</param>
/// <param name="Used">How much the batch weighs of it.</param>
/// <param name="Bought">How much has to be bought for that: more where some is trimmed away.</param>
/// <param name="Cost">Of what is bought, without the rest of the pack; not rounded.</param>
public sealed record CostLine(Ingredient Ingredient, Mass Used, Mass Bought, Money Cost);
