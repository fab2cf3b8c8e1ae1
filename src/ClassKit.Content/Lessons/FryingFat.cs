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
        if (method is null)
            return;
        var isFried = formula.Steps.Any(step => step.Way == CookingWay.Fryer);
        if (isFried && !formula.Surfaces.Any(surface => surface.Ingredient.Role == IngredientRole.Fat))
            problems.Add(
                method.Line,
                "The bread is fried, and no fat is listed for the fryer",
                $"Add it under `## {SurfaceIngredients.Heading}`, with what one fryer or pot takes: `| Vegetable oil (canola) | 1500 g a fryer | frying |`."
            );
        if (!isFried && formula.Surfaces.FirstOrDefault(surface => surface.Each == SurfaceShare.Fryer) is { } none)
            problems.Add(
                method.Line,
                $"{none.Ingredient.Name} is listed for a fryer, and no step is in one",
                "Write the fryer and its heat into the brackets of the step: `(6–8 min, fryer 180 °C, 2 people)`; or the amount for a batch, a tin or a piece."
            );
    }
}
