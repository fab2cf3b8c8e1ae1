using ClassKit.Baking.Allergens;
using ClassKit.Baking.Ingredients;
using ClassKit.Lessons.Authored;
using ClassKit.Lessons.Cards;

namespace ClassKit.Lessons.Allergies;

/// <summary>What one bread means for one need of the class.</summary>
/// <param name="Card">The bread.</param>
/// <param name="Declared">Each ingredient that is declared to hold it, with what is published to take instead.</param>
/// <param name="Unknown">Each ingredient that may hold it, or of which nobody knows.</param>
public sealed record BreadConcern(
    FormulaCard Card,
    IReadOnlyList<ConcernedIngredient> Declared,
    IReadOnlyList<(Ingredient Ingredient, AllergenDoubt Doubt)> Unknown
)
{
    /// <summary>
    /// Breads that are declared to hold it and go through the same hot fat, which carries it over; none for what is not fried.
    /// </summary>
    public IReadOnlyList<LessonFormula> SharesFatWith { get; init; } = [];

    /// <summary>
    /// True if something is published for every ingredient that is declared. It makes another bread of it, and its labels are still to be
    /// read.
    /// </summary>
    public bool HasStandIns => Declared.All(concerned => concerned.StandIn is not null);
}
