using ClassKit.Baking.Allergens;
using ClassKit.Baking.Ingredients;
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
    /// Where breads that are declared to hold it go through the same hot fat, over the same plate or into the same water, which carries it
    /// over; none for what is baked or steamed.
    /// </summary>
    public IReadOnlyList<SharedPlace> Shares { get; init; } = [];

    /// <summary>True of what somebody might be given who must keep away: nothing is declared, or something is published instead.</summary>
    public bool IsOffered => Declared.Count == 0 || HasStandIns;

    /// <summary>
    /// True if something is published for every ingredient that is declared. It makes another bread of it, and its labels are still to be
    /// read.
    /// </summary>
    public bool HasStandIns => Declared.All(concerned => concerned.StandIn is not null);
}
