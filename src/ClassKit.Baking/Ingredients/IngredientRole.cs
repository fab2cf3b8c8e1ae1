namespace ClassKit.Baking.Ingredients;

/// <summary>What an ingredient does in a dough.</summary>
public enum IngredientRole
{
    /// <summary>Part of the 100 %.</summary>
    Flour,

    /// <summary>Water, milk, buttermilk and other liquids.</summary>
    Liquid,

    /// <summary>Eggs, whole or in parts.</summary>
    Egg,

    /// <summary>Butter, oil and other fats.</summary>
    Fat,

    /// <summary>Sugars.</summary>
    Sugar,

    /// <summary>Salt.</summary>
    Salt,

    /// <summary>Yeast of any kind.</summary>
    Yeast,

    /// <summary>Soda, acids, baking powder.</summary>
    ChemicalLeavening,

    /// <summary>Anything else.</summary>
    Other,
}
