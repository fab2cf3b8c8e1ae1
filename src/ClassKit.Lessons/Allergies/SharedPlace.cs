using ClassKit.Baking.Cooking;
using ClassKit.Lessons.Authored;

namespace ClassKit.Lessons.Allergies;

/// <summary>One fat, plate or water that several breads go through, and that carries over what is in them.</summary>
/// <param name="Way">Where they are cooked.</param>
/// <param name="With">The other breads.</param>
public sealed record SharedPlace(CookingWay Way, IReadOnlyList<LessonFormula> With)
{
    /// <summary>
    /// The ways in which what touched one bread touches the next: hot fat, a plate or a pan, boiling water. Common practice, no source.
    /// </summary>
    public static IReadOnlyList<CookingWay> CarryingOver { get; } =
    [CookingWay.Fryer, CookingWay.Griddle, CookingWay.Pan, CookingWay.BoilingWater];

    /// <summary>The ways that a bread is cooked in and that carry over.</summary>
    internal static IReadOnlyList<CookingWay> Of(LessonFormula bread) =>
        [.. CarryingOver.Where(way => bread.Cooking.Any(step => step.Way == way))];
}
