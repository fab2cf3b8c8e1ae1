using ClassKit.Baking.Ingredients;

namespace ClassKit.Lessons.Authored;

/// <summary>What a step does to the temperature of an ingredient: <c>warms whole milk</c>.</summary>
/// <param name="Ingredient">Which.</param>
/// <param name="Kind">Tempered, melted or warmed.</param>
public sealed record IngredientHeat(Ingredient Ingredient, HeatKind Kind);
