namespace ClassKit.Baking.Allergens;

/// <summary>An everyday word for one or several allergens.</summary>
/// <param name="Word">In the singular: <c>gluten</c>, <c>tree nut</c>.</param>
/// <param name="Means">What is looked for; never empty.</param>
public sealed record AllergenWord(string Word, IReadOnlyList<Allergen> Means)
{
    /// <summary>Whether it names an allergy at all.</summary>
    public NeedKind Kind { get; init; }

    /// <summary>What to ask the student, or what the word is not: a whole sentence; empty for nothing.</summary>
    public string Note { get; init; } = "";

    /// <summary>True if flour in the air is part of the danger.</summary>
    public bool IsOfFlour => Means.Any(allergen => allergen.Group == AllergenGroup.GlutenCereals);
}
