using ClassKit.Baking.Ingredients;
using ClassKit.Lessons.Allergies;
using ClassKit.Lessons.Cards;
using ClassKit.Lessons.Classes;

namespace ClassKit.Lessons.Adapting;

/// <summary>Holds the flours of a lesson against those that the kitchen has.</summary>
internal static class FlourOnHand
{
    /// <summary>What to mind for each bread whose flour is not there; nothing where the class does not say which flours it has.</summary>
    public static IEnumerable<Adaptation> Missing(IReadOnlyList<FormulaCard> cards, ClassProfile profile)
    {
        if (profile.Flours is not { } flours)
            yield break;
        foreach (var card in cards)
        {
            foreach (
                var line in card.Batch.Lines.Where(line =>
                    line.Ingredient.Role == IngredientRole.Flour && !flours.Contains(line.Ingredient.Id)
                )
            )
            {
                var name = line.Ingredient.Name.ToLowerInvariant();
                yield return Substitution.For(line, card.Bread.Formula.Leavening) is { } instead && flours.Any(instead.TakesIds.Contains)
                    ? new(card.Bread, $"The kitchen has no {name}. Published: {instead.Instead}.", instead.Source)
                    : new(card.Bread, $"The kitchen has no {name}, and no substitution by what it has is published: buy it.", "");
            }
        }
    }
}
