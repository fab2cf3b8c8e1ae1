using ClassKit.Baking.Ingredients;
using ClassKit.Lessons.Authored;

namespace ClassKit.Lessons.NamedFoods;

/// <summary>A food that a method names.</summary>
/// <param name="Words">As it stands there.</param>
/// <param name="CanBe">What it can mean in the catalogue; empty if the catalogue has nothing of it.</param>
/// <param name="OnSurface">True if it goes on a tin, a board or a top, so that a formula alone does not account for it.</param>
public sealed record FoodMention(string Words, IReadOnlyList<Ingredient> CanBe, bool OnSurface)
{
    /// <summary>True if a bread's lists have it.</summary>
    public bool IsListedIn(LessonFormula formula)
    {
        ArgumentNullException.ThrowIfNull(formula);
        var listed = OnSurface ? formula.Surfaces.Select(surface => surface.Ingredient) : formula.Ingredients;
        // By id: a formula calls an ingredient as its author does.
        return listed.Any(one => CanBe.Any(food => food.Id == one.Id));
    }
}
