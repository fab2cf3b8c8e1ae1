namespace ClassKit.Baking.Allergens;

/// <summary>All that must be declared under the European and the US list: a closed vocabulary.</summary>
/// <remarks>
/// Regulation (EU) 1169/2011, Annex II: fourteen groups, cereals and nuts by name.
/// US FD&amp;C Act 201(qq) as amended by the FASTER Act of 2021: nine foods. Its wheat is every species of Triticum, spelt and khorasan
/// too; its tree nuts are those of the FDA's Questions and Answers Regarding Food Allergens, edition 5 (January 2025), table 1, with the
/// walnuts under one name.
/// </remarks>
public static class AllergenCatalog
{
    private const string TreeNuts = "tree nuts";

    /// <summary>Wheat.</summary>
    public static Allergen Wheat { get; } = new("wheat", AllergenGroup.GlutenCereals, "wheat");

    /// <summary>Barley, malt too.</summary>
    public static Allergen Barley { get; } = new("barley", AllergenGroup.GlutenCereals, null);

    /// <summary>Rye.</summary>
    public static Allergen Rye { get; } = new("rye", AllergenGroup.GlutenCereals, null);

    /// <summary>Oats.</summary>
    public static Allergen Oats { get; } = new("oats", AllergenGroup.GlutenCereals, null);

    /// <summary>Eggs of any bird.</summary>
    public static Allergen Egg { get; } = new("egg", AllergenGroup.Eggs, "egg");

    /// <summary>Fish.</summary>
    public static Allergen Fish { get; } = new("fish", AllergenGroup.Fish, "fish");

    /// <summary>Peanuts.</summary>
    public static Allergen Peanut { get; } = new("peanut", AllergenGroup.Peanuts, "peanuts");

    /// <summary>Soybeans.</summary>
    public static Allergen Soya { get; } = new("soya", AllergenGroup.Soybeans, "soybeans");

    /// <summary>Milk of any animal.</summary>
    public static Allergen Milk { get; } = new("milk", AllergenGroup.Milk, "milk");

    /// <summary>Almonds.</summary>
    public static Allergen Almond { get; } = new("almond", AllergenGroup.Nuts, TreeNuts);

    /// <summary>Walnuts.</summary>
    public static Allergen Walnut { get; } = new("walnut", AllergenGroup.Nuts, TreeNuts);

    /// <summary>Sesame seeds.</summary>
    public static Allergen Sesame { get; } = new("sesame", AllergenGroup.Sesame, "sesame");

    /// <summary>Sulphur dioxide and sulphites.</summary>
    public static Allergen Sulphites { get; } = new("sulphites", AllergenGroup.Sulphites, null);

    /// <summary>All of them, in the order of Annex II.</summary>
    public static IReadOnlyList<Allergen> All { get; } =
    [
        Wheat,
        new("spelt", AllergenGroup.GlutenCereals, "wheat"),
        new("khorasan wheat", AllergenGroup.GlutenCereals, "wheat"),
        Rye,
        Barley,
        Oats,
        new("crustaceans", AllergenGroup.Crustaceans, "crustacean shellfish"),
        Egg,
        Fish,
        Peanut,
        Soya,
        Milk,
        Almond,
        new("hazelnut", AllergenGroup.Nuts, TreeNuts),
        Walnut,
        new("cashew", AllergenGroup.Nuts, TreeNuts),
        new("pecan", AllergenGroup.Nuts, TreeNuts),
        new("Brazil nut", AllergenGroup.Nuts, TreeNuts),
        new("pistachio", AllergenGroup.Nuts, TreeNuts),
        new("macadamia nut", AllergenGroup.Nuts, TreeNuts),
        new("pine nut", AllergenGroup.Nuts, TreeNuts) { IsEuropean = false },
        new("celery", AllergenGroup.Celery, null),
        new("mustard", AllergenGroup.Mustard, null),
        Sesame,
        Sulphites,
        new("lupin", AllergenGroup.Lupin, null),
        new("molluscs", AllergenGroup.Molluscs, null),
    ];

    /// <summary>Those of one group.</summary>
    public static IReadOnlyList<Allergen> Of(AllergenGroup group) => [.. All.Where(allergen => allergen.Group == group)];
}
