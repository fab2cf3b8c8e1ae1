using ClassKit.Baking.Allergens;
using ClassKit.Baking.Ingredients;

namespace ClassKit.Lessons.Allergies;

/// <summary>An ingredient that is declared to hold what a need of the class names.</summary>
/// <param name="Ingredient">What.</param>
/// <param name="Holds">Which of the need's allergens.</param>
/// <param name="StandIn">What is published to take instead; null where nothing is.</param>
public sealed record ConcernedIngredient(Ingredient Ingredient, IReadOnlyList<Allergen> Holds, StandIn? StandIn);
