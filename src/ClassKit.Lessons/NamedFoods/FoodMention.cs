using ClassKit.Baking.Ingredients;
using ClassKit.Lessons.Authored;

namespace ClassKit.Lessons.NamedFoods;

/// <summary>A food that a method names.</summary>
/// <param name="Words">As it stands there.</param>
/// <param name="CanBe">What it can mean in the catalogue; empty if the catalogue has nothing of it.</param>
/// <param name="OnSurface">True if it goes on a tin, a board or a top, so that a formula alone does not account for it.</param>
public sealed record FoodMention(string Words, IReadOnlyList<Ingredient> CanBe, bool OnSurface)
{
    /// <summary>True if a method may make it of what the formula lists: a custard of milk and egg. Bought ready it holds no one knows what.</summary>
    public bool MayBeMade => CanBe.Count == 0 && FoodLexicon.MayBeMade(Words);

    /// <summary>True if a bread's lists have it.</summary>
    public bool IsListedIn(LessonFormula formula)
    {
        ArgumentNullException.ThrowIfNull(formula);
        var listed = OnSurface ? formula.Surfaces.Select(surface => surface.Ingredient) : formula.Ingredients;
        // By id: a formula calls an ingredient as its author does.
        return listed.Any(one => CanBe.Any(food => food.Id == one.Id) || IsShortFor(one));
    }

    /// <summary>
    /// True where it is the end of a listed ingredient's name: the jam of apricot jam, the rye flour of dark rye flour. Not where the plain
    /// word is another kind of thing or has an allergen that the listed one has not: peanut butter is no butter, almond milk no milk.
    /// </summary>
    private bool IsShortFor(Ingredient listed) =>
        FoodLexicon.IsEndOf(Words, listed)
        && (CanBe.Count == 0 || CanBe.Any(food => food.Role == listed.Role && food.Allergens.All(listed.Allergens.Contains)));
}
