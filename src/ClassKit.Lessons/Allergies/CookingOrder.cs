using ClassKit.Baking.Allergens;
using ClassKit.Baking.Ingredients;
using ClassKit.BenchPlans.Classes;
using ClassKit.Lessons.Authored;
using ClassKit.Lessons.Classes;
using ClassKit.Lessons.Cooking;

namespace ClassKit.Lessons.Allergies;

/// <summary>
/// Which bread is cooked first where several go through one fat, plate or water: the one that lacks what another brings. Common practice,
/// no source.
/// </summary>
public static class CookingOrder
{
    private static readonly IReadOnlyList<Allergen> Gluten = AllergenWords.Find("gluten")!.Means;

    /// <summary>
    /// Every order among the breads of a lesson: what is without gluten goes before what holds it, and else what is declared to hold less
    /// before what holds the same and more. Where each holds something that the other lacks, none goes first. Of breads that are declared to
    /// hold the same, what may hold less goes before what may hold the same and more: what is in doubt counts after what is declared.
    /// </summary>
    /// <remarks>The same whoever is in the class: a plan that followed its needs would tell of them to all who read it.</remarks>
    public static IReadOnlyList<CookedFirst> Of(IReadOnlyList<LessonFormula> breads, ClassProfile profile)
    {
        ArgumentNullException.ThrowIfNull(breads);
        ArgumentNullException.ThrowIfNull(profile);
        return
        [
            .. breads.SelectMany(
                (bread, at) =>
                    breads.SelectMany(
                        (other, before) =>
                            before != at && GoesFirst(bread, other)
                                ? SharedPlace
                                    .Of(bread)
                                    .Intersect(SharedPlace.Of(other))
                                    .Select(way => new CookedFirst(at, before, way)
                                    {
                                        // Where nobody has counted them there may be one for all: what suits a plan's places is no care for allergens.
                                        EachForItself =
                                            profile.ApplianceOf(CookingPlace.Of(way).Kind!).Count is { } count && count >= profile.Teams,
                                    })
                                : []
                    )
            ),
        ];
    }

    /// <summary>
    /// Every bread that is to be out of the fat, or off the plate, before a demonstration puts into it what the bread lacks: by the same
    /// rule as among breads, and for every team, since nobody knows whose fryer is shown at.
    /// </summary>
    public static IReadOnlyList<ShownBehind> Shown(Lesson lesson)
    {
        ArgumentNullException.ThrowIfNull(lesson);
        return
        [
            .. lesson.Formulas.SelectMany(
                (bread, at) =>
                    lesson.Demonstrations.SelectMany(
                        (shown, behind) =>
                            GoesFirst(bread.Ingredients, [.. shown.Ingredients.Select(line => line.Ingredient)])
                                ? SharedPlace.Of(bread).Intersect(SharedPlace.Of(shown)).Select(way => new ShownBehind(at, behind, way))
                                : []
                    )
            ),
        ];
    }

    private static bool GoesFirst(LessonFormula bread, LessonFormula other) => GoesFirst(bread.Ingredients, other.Ingredients);

    private static bool GoesFirst(IReadOnlyList<Ingredient> first, IReadOnlyList<Ingredient> other)
    {
        var (declared, others) = (Declared(first), Declared(other));
        if (declared.Overlaps(Gluten) != others.Overlaps(Gluten))
            return others.Overlaps(Gluten);
        return declared.SetEquals(others) ? Perhaps(first).IsProperSubsetOf(Perhaps(other)) : declared.IsProperSubsetOf(others);
    }

    private static HashSet<Allergen> Declared(IReadOnlyList<Ingredient> ingredients) =>
        [.. ingredients.SelectMany(ingredient => ingredient.Allergens)];

    /// <summary>What it may hold besides what is declared; every allergen there is where nobody knows.</summary>
    private static HashSet<Allergen> Perhaps(IReadOnlyList<Ingredient> ingredients) =>
        [
            .. ingredients
                .SelectMany(ingredient => ingredient.Doubts)
                .SelectMany(doubt => doubt.Maybe.Count > 0 ? doubt.Maybe : AllergenCatalog.All)
                .Except(Declared(ingredients)),
        ];
}
