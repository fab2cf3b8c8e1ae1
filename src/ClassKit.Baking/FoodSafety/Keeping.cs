using ClassKit.Baking.Allergens;
using ClassKit.Baking.Ingredients;

namespace ClassKit.Baking.FoodSafety;

/// <summary>Which ingredients are kept cold.</summary>
public static class Keeping
{
    /// <summary>
    /// What holds milk or egg: time and temperature control for safety, FDA Food Code 1-201.10(B). Fresh yeast is kept cold for its own
    /// sake.
    /// </summary>
    public static bool IsKeptCold(this Ingredient ingredient)
    {
        ArgumentNullException.ThrowIfNull(ingredient);
        return ingredient.Role == IngredientRole.Egg
            || ingredient.Allergens.Contains(AllergenCatalog.Milk)
            || ingredient.Id == "fresh_yeast";
    }
}
