namespace ClassKit.Baking.Ingredients;

/// <summary>What in an ingredient makes gas without yeast.</summary>
public enum RaisingKind
{
    /// <summary>Sodium bicarbonate, which asks for an acid.</summary>
    Soda,

    /// <summary>Potassium bicarbonate, which asks for the same acids.</summary>
    PotassiumBicarbonate,

    /// <summary>Ammonium bicarbonate, which heat alone breaks down.</summary>
    Ammonia,

    /// <summary>Soda with its own acid: a baking powder, or a flour that it is mixed into.</summary>
    Powder,
}
