using ClassKit.Baking.Allergens;
using ClassKit.Baking.Ingredients;
using ClassKit.Lessons.Authored;

namespace ClassKit.Lessons.Allergies;

/// <summary>What is declared of a bread and what is not known, from everything that touches it. The same for every class.</summary>
/// <param name="Bread">The bread.</param>
/// <param name="Declared">Each allergen with the ingredients that bring it, in the order of the regulation.</param>
/// <param name="Unknown">Each doubt of each ingredient.</param>
public sealed record BreadAllergens(
    LessonFormula Bread,
    IReadOnlyList<(Allergen Allergen, IReadOnlyList<Ingredient> BroughtBy)> Declared,
    IReadOnlyList<(Ingredient Ingredient, AllergenDoubt Doubt)> Unknown
)
{
    /// <summary>Reads them off a formula.</summary>
    public static BreadAllergens Of(LessonFormula formula) => Without([], formula);

    /// <summary>Reads them off a formula from which something is left out.</summary>
    public static BreadAllergens Without(IReadOnlyList<Ingredient> leftOut, LessonFormula formula)
    {
        ArgumentNullException.ThrowIfNull(leftOut);
        ArgumentNullException.ThrowIfNull(formula);
        var ingredients = formula.Ingredients.Except(leftOut).ToList();
        return new(
            formula,
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
}
