namespace ClassKit.Baking.Allergens;

/// <summary>What a word for an allergen is a word for.</summary>
public enum NeedKind
{
    /// <summary>An allergy: the immune system answers at once and may endanger life.</summary>
    Allergy,

    /// <summary>An intolerance, as of lactose: no allergy, and treated here with the same care.</summary>
    Intolerance,

    /// <summary>A disease, as coeliac disease: no allergy, and as strict.</summary>
    Condition,
}
