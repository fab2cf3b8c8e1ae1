using ClassKit.Baking.Ingredients;
using ClassKit.Baking.Quantities;

namespace ClassKit.Baking.Formulas;

/// <summary>An ingredient and a mass of it.</summary>
/// <param name="Ingredient">What.</param>
/// <param name="Mass">How much; not negative.</param>
public sealed record WeighedIngredient(Ingredient Ingredient, Mass Mass);
