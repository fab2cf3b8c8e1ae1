using ClassKit.Baking.Ingredients;
using ClassKit.Baking.Quantities;

namespace ClassKit.Baking.Weighing;

/// <summary>What the scales on the bench can show.</summary>
/// <param name="Large">The division of the scale for flour, water and the like; above 0.</param>
/// <param name="Small">The division of the scale for salt, yeast and chemical leavening; above 0, at most <paramref name="Large"/>.</param>
public sealed record Scales(Mass Large, Mass Small)
{
    /// <summary>Below this many divisions a division is more than 5 %, and the finer scale is used whatever the ingredient.</summary>
    private const int FewestDivisions = 20;

    /// <summary>1 g, and 0.1 g for small amounts: common in teaching kitchens, no source.</summary>
    public static Scales Common { get; } = new(Mass.FromGrams(1), Mass.FromGrams(0.1));

    /// <summary>One scale for everything.</summary>
    public static Scales One(Mass resolution) => new(resolution, resolution);

    /// <summary>The division of the scale that an amount belongs on.</summary>
    /// <param name="ingredient">What is weighed.</param>
    /// <param name="amount">How much of it.</param>
    public Mass For(Ingredient ingredient, Mass amount)
    {
        ArgumentNullException.ThrowIfNull(ingredient);
        var counts = ingredient.Role is IngredientRole.Salt or IngredientRole.Yeast or IngredientRole.ChemicalLeavening;
        return counts || amount < Large * FewestDivisions ? Small : Large;
    }
}
