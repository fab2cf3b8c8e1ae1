using ClassKit.Baking.Allergens;
using ClassKit.Baking.Ingredients;
using ClassKit.Lessons.Authored;

namespace ClassKit.Lessons.Allergies;

/// <summary>What a demonstration means for one need of the class: what it weighs out goes through hands and round the table as a bread does.</summary>
/// <param name="Shown">The demonstration.</param>
/// <param name="Declared">Each ingredient that is declared to hold it, with which of the need's allergens.</param>
/// <param name="Unknown">Each ingredient that may hold it, or of which nobody knows.</param>
public sealed record ShownConcern(
    LessonDemonstration Shown,
    IReadOnlyList<(Ingredient Ingredient, IReadOnlyList<Allergen> Holds)> Declared,
    IReadOnlyList<(Ingredient Ingredient, AllergenDoubt Doubt)> Unknown
);
