using ClassKit.Baking;

namespace ClassKit.Lessons;

/// <summary>An allergy in the class that meets one bread.</summary>
/// <param name="Allergen">In the words of the class profile.</param>
/// <param name="Card">The bread.</param>
/// <param name="Offers">Each ingredient that holds it, with what is published to take instead; null where nothing is.</param>
public sealed record AllergyImpact(string Allergen, FormulaCard Card, IReadOnlyList<(Ingredient Ingredient, Substitution? Instead)> Offers)
{
    /// <summary>True if the whole bread can be made without the allergen by what is published.</summary>
    public bool CanDoWithout => Offers.All(offer => offer.Instead is not null);

    internal static IReadOnlyList<AllergyImpact> Of(IReadOnlyList<FormulaCard> cards, ClassProfile profile) =>
    [
        .. profile.Allergies.Distinct(StringComparer.OrdinalIgnoreCase).SelectMany(allergen => cards
            .Where(card => card.Formula.Allergens.Contains(allergen, StringComparer.OrdinalIgnoreCase))
            .Select(card => new AllergyImpact(allergen, card,
            [
                .. card.Batch.Lines.Where(line => line.Ingredient.Allergens.Contains(allergen, StringComparer.OrdinalIgnoreCase)).DistinctBy(line => line.Ingredient.Id)
                    .Select(line => (line.Ingredient, Substitution.For(line, card.Formula.Formula.Leavening, allergen.ToLowerInvariant()))),
            ]))),
    ];
}
