using ClassKit.Baking.Cooking;
using ClassKit.Baking.Ingredients;
using ClassKit.Content.Diagnostics;
using ClassKit.Content.Outline;
using ClassKit.Lessons.Authored;

namespace ClassKit.Content.Lessons;

/// <summary>
/// Holds what is fried against its lists: a fryer takes litres of fat, which is ordered, paid for and declared like anything else.
/// </summary>
internal static class FryingFat
{
    public static void Check(Section? method, LessonFormula formula, ProblemList problems)
    {
        if (
            method is not null
            && formula.Steps.Any(step => step.Way == CookingWay.Fryer)
            && !formula.Surfaces.Any(surface => surface.Ingredient.Role == IngredientRole.Fat)
        )
            problems.Add(
                method.Line,
                "The bread is fried, and no fat is listed for the fryer",
                $"Add it under `## {SurfaceIngredients.Heading}`, with what one team needs: `| Vegetable oil (canola) | 1500 g a batch | the fryer |`."
            );
    }
}
