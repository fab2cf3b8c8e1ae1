using ClassKit.Baking.Cooking;
using ClassKit.Lessons.Authored;
using ClassKit.Lessons.Cooking;

namespace ClassKit.Lessons.Allergies;

/// <summary>One fat, plate or water that several breads go through, and that carries over what is in them.</summary>
/// <param name="Way">Where they are cooked.</param>
/// <param name="With">The other breads that are declared to hold what is carried over.</param>
public sealed record SharedPlace(CookingWay Way, IReadOnlyList<LessonFormula> With)
{
    /// <summary>The other breads that may hold it: nothing is declared of them, and only labels tell.</summary>
    public IReadOnlyList<LessonFormula> InDoubt { get; init; } = [];

    /// <summary>The demonstrations that put something into the same fat, or onto the same plate, that is declared to hold it.</summary>
    public IReadOnlyList<LessonDemonstration> Shown { get; init; } = [];

    /// <summary>The demonstrations of which that is not known.</summary>
    public IReadOnlyList<LessonDemonstration> ShownInDoubt { get; init; } = [];

    /// <summary>
    /// The ways in which what touched one bread touches the next: hot fat, a plate or a pan, boiling water. Common practice, no source.
    /// </summary>
    public static IReadOnlyList<CookingWay> CarryingOver { get; } =
    [CookingWay.Fryer, CookingWay.Griddle, CookingWay.Pan, CookingWay.BoilingWater];

    /// <summary>True if it carries anything over, for certain or perhaps.</summary>
    internal bool IsShared => With.Count + InDoubt.Count + Shown.Count + ShownInDoubt.Count > 0;

    /// <summary>The ways that a bread is cooked in and that carry over.</summary>
    internal static IReadOnlyList<CookingWay> Of(LessonFormula bread) =>
        [.. CarryingOver.Where(way => bread.Cooking.Any(step => step.Way == way))];

    /// <summary>
    /// The ways whose equipment a demonstration occupies. A burner tells nothing: whose pan or pot stands on it, only the instructor knows.
    /// </summary>
    internal static IReadOnlyList<CookingWay> Of(LessonDemonstration shown) =>
        [.. new[] { CookingWay.Fryer, CookingWay.Griddle }.Where(way => shown.Uses.Any(use => use.Kind == CookingPlace.Of(way).Kind))];
}
