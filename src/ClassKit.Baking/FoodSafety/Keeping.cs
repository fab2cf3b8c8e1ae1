using ClassKit.Baking.Allergens;
using ClassKit.Baking.Ingredients;

namespace ClassKit.Baking.FoodSafety;

/// <summary>Which ingredients are kept cold.</summary>
public static class Keeping
{
    /// <summary>Yeast with more water than this is alive and spoils: fresh yeast holds 69 %, dry yeast 5 % to 8 % (USDA SR28, NDB 18374, 18375).</summary>
    private const double Moist = 0.2;

    /// <summary>Milk powder and ghee hold less water than this, butter and margarine more: 3 %, 0.2 %, 16 % (USDA SR28). What is dry keeps.</summary>
    private const double Dry = 0.1;

    /// <summary>
    /// What its row says; else what is moist and holds milk or egg, or may hold them: time and temperature control for safety, FDA Food Code
    /// 1-201.10(B). Plant food that is so too (heat-treated, cut leaves) says it in its row, since nothing else tells it. Fresh yeast is
    /// kept cold for its own sake.
    /// </summary>
    public static bool IsKeptCold(this Ingredient ingredient)
    {
        ArgumentNullException.ThrowIfNull(ingredient);
        return ingredient.IsSaidCold
            ?? (
                ingredient.Role == IngredientRole.Egg
                || ingredient is { Role: IngredientRole.Yeast, WaterShare: > Moist }
                || (ingredient.WaterShare > Dry && Animal.Any(ingredient.MayHold))
            );
    }

    private static readonly Allergen[] Animal = [AllergenCatalog.Milk, AllergenCatalog.Egg];

    private static bool MayHold(this Ingredient ingredient, Allergen allergen) =>
        ingredient.Allergens.Contains(allergen) || ingredient.Doubts.Any(doubt => doubt.Maybe.Contains(allergen));
}
