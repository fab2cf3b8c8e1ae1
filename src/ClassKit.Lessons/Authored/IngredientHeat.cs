using ClassKit.Baking.Ingredients;

namespace ClassKit.Lessons.Authored;

/// <summary>What a step does to the temperature of an ingredient: <c>warms whole milk</c>, <c>boils 40 % of water</c>.</summary>
/// <param name="Ingredient">Which.</param>
/// <param name="Kind">Tempered, melted or warmed.</param>
public sealed record IngredientHeat(Ingredient Ingredient, HeatKind Kind)
{
    /// <summary>How much of the ingredient: above 0, and 1 for all of it. The rest goes in as if no step named it.</summary>
    public double Share { get; init; } = 1;

    /// <summary>True where the rest of it is still to go in.</summary>
    public bool IsOfAPart => Share < 1;
}
