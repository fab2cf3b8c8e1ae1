namespace ClassKit.Baking.Allergens;

/// <summary>What may or may not be in an ingredient: only the label of the product that was bought can tell.</summary>
/// <param name="Maybe">What it may hold; empty if that is not known either.</param>
/// <param name="Why">Where it would come from: <c>malted barley flour</c>.</param>
/// <param name="Source">Where that is published, or from memory.</param>
public sealed record AllergenDoubt(IReadOnlyList<Allergen> Maybe, string Why, string Source);
