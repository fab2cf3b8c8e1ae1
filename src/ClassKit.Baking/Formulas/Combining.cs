using ClassKit.Baking.Quantities;

namespace ClassKit.Baking.Formulas;

/// <summary>Adds up what is needed of each ingredient, over a recipe, several batches or a whole class.</summary>
public static class Combining
{
    /// <summary>Each ingredient once, with all of its masses, in the order of first use.</summary>
    public static IReadOnlyList<WeighedIngredient> Same(IEnumerable<WeighedIngredient> lines)
    {
        ArgumentNullException.ThrowIfNull(lines);
        return
        [
            .. lines
                .GroupBy(line => line.Ingredient.Id)
                .Select(group => new WeighedIngredient(
                    group.First().Ingredient,
                    group.Aggregate(default(Mass), (sum, line) => sum + line.Mass)
                )),
        ];
    }

    /// <summary>What several batches weigh of each ingredient.</summary>
    public static IReadOnlyList<WeighedIngredient> Batches(IEnumerable<Batch> batches)
    {
        ArgumentNullException.ThrowIfNull(batches);
        return Same(batches.SelectMany(batch => batch.Lines).Select(line => new WeighedIngredient(line.Ingredient, line.Weighed)));
    }
}
