using ClassKit.Baking.Ingredients;
using ClassKit.Baking.Quantities;
using ClassKit.BenchPlans.Classes;
using ClassKit.Lessons.Authored;
using ClassKit.Lessons.Classes;

namespace ClassKit.Lessons.Cards;

/// <summary>Fat that fryers are filled with, once for all that is fried in it.</summary>
/// <param name="Fat">What.</param>
/// <param name="Each">How much one fryer takes: the most that any of the breads asks for.</param>
/// <param name="Counted">How many fryers the kitchen has; null where nobody has counted, and each team that fries has one.</param>
/// <param name="Makers">How many fry in it: teams, and the instructor where a bread is left to him; 1 or more.</param>
/// <param name="For">What is fried in it, in the order of the cards.</param>
public sealed record FryerFilling(Ingredient Fat, Mass Each, int? Counted, int Makers, IReadOnlyList<LessonFormula> For)
{
    /// <summary>How many fryers are filled: no more than there are, and no more than there are hands for.</summary>
    public int Fryers => Math.Max(1, Math.Min(Counted ?? Makers, Makers));

    /// <summary>What all of them take.</summary>
    public Mass Mass => Mass.FromGrams((double)((decimal)Each.Grams * Fryers));

    /// <summary>Every filling of a class, a fat each.</summary>
    public static IReadOnlyList<FryerFilling> Of(IReadOnlyList<FormulaCard> cards, ClassProfile profile)
    {
        ArgumentNullException.ThrowIfNull(cards);
        ArgumentNullException.ThrowIfNull(profile);
        return
        [
            .. cards
                .Where(card => card.Bread.FryingFat is not null)
                .GroupBy(card => card.Bread.FryingFat!.Ingredient.Id)
                .Select(fried => new FryerFilling(
                    fried.First().Bread.FryingFat!.Ingredient,
                    Mass.FromGrams(fried.Max(card => card.Bread.FryingFat!.Amount.Grams)),
                    profile.ApplianceOf(EquipmentKind.Fryer).Count,
                    fried.SelectMany(card => card.Teams).Distinct().Count() + (fried.Any(card => card.IsInstructors) ? 1 : 0),
                    [.. fried.Select(card => card.Bread)]
                )),
        ];
    }

    /// <summary>The share of it that a load of a bread is charged with: all loads alike.</summary>
    /// <param name="cards">The cards of the class.</param>
    internal Mass PerLoad(IReadOnlyList<FormulaCard> cards) =>
        Mass.FromGrams(Mass.Grams / cards.Where(card => card.Bread.FryingFat?.Ingredient.Id == Fat.Id).Sum(card => card.Loads));
}
