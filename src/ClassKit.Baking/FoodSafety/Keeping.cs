using ClassKit.Baking.Allergens;
using ClassKit.Baking.Ingredients;

namespace ClassKit.Baking.FoodSafety;

/// <summary>Which ingredients are kept cold.</summary>
public static class Keeping
{
    /// <summary>Yeast with more water than this is alive and spoils: fresh yeast holds 69 %, dry yeast 5 % to 8 % (USDA SR28, NDB 18374, 18375).</summary>
    private const double Moist = 0.2;

    /// <summary>
    /// What holds milk or egg: time and temperature control for safety, FDA Food Code 1-201.10(B). Fresh yeast is kept cold for its own
    /// sake.
    /// </summary>
    public static bool IsKeptCold(this Ingredient ingredient)
    {
        ArgumentNullException.ThrowIfNull(ingredient);
        return ingredient.Role == IngredientRole.Egg
            || ingredient.Allergens.Contains(AllergenCatalog.Milk)
            || ingredient is { Role: IngredientRole.Yeast, WaterShare: > Moist };
    }
}
