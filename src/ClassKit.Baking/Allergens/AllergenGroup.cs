namespace ClassKit.Baking.Allergens;

/// <summary>The fourteen groups of Regulation (EU) 1169/2011, Annex II, in its order.</summary>
public enum AllergenGroup
{
    /// <summary>Cereals containing gluten, by name.</summary>
    GlutenCereals,

    /// <summary>Crustaceans.</summary>
    Crustaceans,

    /// <summary>Eggs.</summary>
    Eggs,

    /// <summary>Fish.</summary>
    Fish,

    /// <summary>Peanuts.</summary>
    Peanuts,

    /// <summary>Soybeans.</summary>
    Soybeans,

    /// <summary>Milk, lactose included.</summary>
    Milk,

    /// <summary>Nuts of trees, by name.</summary>
    Nuts,

    /// <summary>Celery.</summary>
    Celery,

    /// <summary>Mustard.</summary>
    Mustard,

    /// <summary>Sesame seeds.</summary>
    Sesame,

    /// <summary>Sulphur dioxide and sulphites above 10 mg/kg or 10 mg/L.</summary>
    Sulphites,

    /// <summary>Lupin.</summary>
    Lupin,

    /// <summary>Molluscs.</summary>
    Molluscs,
}
