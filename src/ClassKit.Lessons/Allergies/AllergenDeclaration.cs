using ClassKit.Baking.Allergens;
using ClassKit.Baking.Ingredients;
using ClassKit.Lessons.Authored;

namespace ClassKit.Lessons.Allergies;

/// <summary>
/// What is declared of a bread or a demonstration and what is not known, from everything that touches it. The same for every class.
/// </summary>
/// <param name="Declared">Each allergen with the ingredients that bring it, in the order of the regulation.</param>
/// <param name="Unknown">Each doubt of each ingredient.</param>
public sealed record AllergenDeclaration(
    IReadOnlyList<(Allergen Allergen, IReadOnlyList<Ingredient> BroughtBy)> Declared,
    IReadOnlyList<(Ingredient Ingredient, AllergenDoubt Doubt)> Unknown
)
{
    /// <summary>Reads it off a formula.</summary>
    public static AllergenDeclaration Of(LessonFormula formula) => Without([], formula);

    /// <summary>Reads it off a formula from which something is left out.</summary>
    public static AllergenDeclaration Without(IReadOnlyList<Ingredient> leftOut, LessonFormula formula)
    {
        ArgumentNullException.ThrowIfNull(leftOut);
        ArgumentNullException.ThrowIfNull(formula);
        return Of([.. formula.Ingredients.Except(leftOut)]);
    }

    /// <summary>Reads it off what a demonstration weighs out.</summary>
    public static AllergenDeclaration Of(LessonDemonstration shown)
    {
        ArgumentNullException.ThrowIfNull(shown);
        return Of([.. shown.Ingredients.Select(line => line.Ingredient).DistinctBy(ingredient => ingredient.Id)]);
    }

    private static AllergenDeclaration Of(IReadOnlyList<Ingredient> ingredients) =>
        new(
            [
                .. AllergenCatalog
                    .All.Select(allergen =>
                        (allergen, (IReadOnlyList<Ingredient>)[.. ingredients.Where(ingredient => ingredient.Allergens.Contains(allergen))])
                    )
                    .Where(found => found.Item2.Count > 0),
            ],
            [.. ingredients.SelectMany(ingredient => ingredient.Doubts.Select(doubt => (ingredient, doubt)))]
        );
}
