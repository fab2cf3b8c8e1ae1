namespace ClassKit.Baking.Allergens;

/// <summary>Something that a law makes a label declare.</summary>
/// <param name="Name">As pages write it.</param>
/// <param name="Group">Its group in the European list.</param>
/// <param name="UnitedStatesTerm">What the US list calls it; null if it is not on it.</param>
public sealed record Allergen(string Name, AllergenGroup Group, string? UnitedStatesTerm)
{
    /// <summary>True if Annex II of Regulation (EU) 1169/2011 names it. Pine nuts are on the US list alone.</summary>
    public bool IsEuropean { get; init; } = true;
}
