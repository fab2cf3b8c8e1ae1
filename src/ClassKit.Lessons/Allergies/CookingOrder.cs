using ClassKit.Baking.Allergens;
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
                                        EachForItself =
                                            profile.ApplianceOf(CookingPlace.Of(way).Kind!).Count is not { } count
                                            || count >= profile.Teams,
                                    })
                                : []
                    )
            ),
        ];
    }

    private static bool GoesFirst(LessonFormula bread, LessonFormula other)
    {
        if (HoldsGluten(bread) != HoldsGluten(other))
            return HoldsGluten(other);
        var (declared, others) = (bread.Allergens.ToHashSet(), other.Allergens.ToHashSet());
        return declared.SetEquals(others) ? Perhaps(bread).IsProperSubsetOf(Perhaps(other)) : declared.IsProperSubsetOf(others);
    }

    private static bool HoldsGluten(LessonFormula bread) => bread.Allergens.Any(Gluten.Contains);

    /// <summary>What it may hold besides what is declared; every allergen there is where nobody knows.</summary>
    private static HashSet<Allergen> Perhaps(LessonFormula bread) =>
        [
            .. bread
                .Ingredients.SelectMany(ingredient => ingredient.Doubts)
                .SelectMany(doubt => doubt.Maybe.Count > 0 ? doubt.Maybe : AllergenCatalog.All)
                .Except(bread.Allergens),
        ];
}
