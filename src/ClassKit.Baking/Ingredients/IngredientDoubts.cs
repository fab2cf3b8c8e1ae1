using ClassKit.Baking.Allergens;

namespace ClassKit.Baking.Ingredients;

/// <summary>What may be in the ingredients of the catalogue without standing in their names.</summary>
public static class IngredientDoubts
{
    private const string Memory = "from memory";

    /// <summary>
    /// The doubts that a word of a file's column <c>label</c> stands for; words of somebody's own are one about what is not known.
    /// </summary>
    public static AllergenDoubt[] Of(string word) =>
        Named.Value.TryGetValue(word, out var known) ? known : [new([], word, "as the file of ingredients says")];

    /// <summary>The words there are.</summary>
    public static IReadOnlyCollection<string> Words => Named.Value.Keys;

    /// <summary>Any product may have been near anything; these are the cases that bakers meet.</summary>
    private static AllergenDoubt[] MaltedFlour { get; } =
    [new([AllergenCatalog.Barley], "malted barley flour may be added", "21 CFR 137.105, 137.165 and 137.200")];

    /// <summary>Which oil it is.</summary>
    private static AllergenDoubt[] RefinedOil { get; } =
    [
        new(
            [AllergenCatalog.Soya, AllergenCatalog.Peanut, .. AllergenCatalog.Of(AllergenGroup.Nuts), AllergenCatalog.Sesame],
            "which seed or nut it is pressed from; oils refined in full need not be declared (soybean in the EU, any in the US), others must",
            "Regulation (EU) 1169/2011, Annex II, 6 (a); US FD&C Act 201(qq)(2)(A)"
        ),
    ];

    /// <summary>What it is blended with.</summary>
    private static AllergenDoubt[] BlendedOil { get; } = [new([], "it may be blended with other oils", Memory)];

    /// <summary>What it is made of.</summary>
    private static AllergenDoubt[] Shortening { get; } =
    [new([AllergenCatalog.Soya, AllergenCatalog.Milk], "which fats and emulsifiers it is made of", Memory)];

    /// <summary>What its starch is of.</summary>
    private static AllergenDoubt[] Starch { get; } = [new([AllergenCatalog.Wheat], "its starch may be of wheat", Memory)];

    /// <summary>What raises it.</summary>
    private static AllergenDoubt[] SelfRaising { get; } = [.. MaltedFlour, new([], "what its raising agents are carried on", Memory)];

    /// <summary>What thickens it.</summary>
    private static AllergenDoubt[] Thickened { get; } = [new([], "it may be thickened or stabilised", Memory)];

    /// <summary>What is left of its making.</summary>
    private static AllergenDoubt[] Sulphur { get; } = [new([AllergenCatalog.Sulphites], "sulphites may be left from its making", Memory)];

    /// <summary>What dry yeast is grown on.</summary>
    private static AllergenDoubt[] DryYeast { get; } = [new([], "its emulsifier, and what the yeast was grown on", Memory)];

    /// <summary>What fresh yeast is grown on.</summary>
    private static AllergenDoubt[] FreshYeast { get; } =
    [new([AllergenCatalog.Wheat, AllergenCatalog.Barley], "what the yeast was grown on", Memory)];

    /// <summary>What was milled beside it.</summary>
    private static AllergenDoubt[] Milled { get; } = [new([AllergenCatalog.Wheat], "it is often milled and packed where wheat is", Memory)];

    /// <summary>What was packed beside it.</summary>
    private static AllergenDoubt[] Nuts { get; } =
    [
        new(AllergenCatalog.Of(AllergenGroup.Nuts), "nuts are often shelled and packed together", Memory),
        new([AllergenCatalog.Peanut], "nuts are often packed where peanuts are", Memory),
    ];

    /// <summary>What a coating may hold that keeps dried fruit from sticking.</summary>
    private static AllergenDoubt[] OilFilm { get; } =
    [new([AllergenCatalog.Sulphites], "sulphites, and the oil that keeps the fruit apart", Memory)];

    /// <summary>What chocolate is made and poured beside.</summary>
    private static AllergenDoubt[] Chocolate { get; } =
    [
        new([AllergenCatalog.Soya, AllergenCatalog.Milk], "its emulsifier, and milk from the same line", Memory),
        new(AllergenCatalog.Of(AllergenGroup.Nuts), "nuts from the same line", Memory),
    ];

    private static readonly Lazy<Dictionary<string, AllergenDoubt[]>> Named = new(() =>
        new(StringComparer.OrdinalIgnoreCase)
        {
            ["malted flour"] = MaltedFlour,
            ["refined oil"] = RefinedOil,
            ["blended oil"] = BlendedOil,
            ["shortening"] = Shortening,
            ["starch"] = Starch,
            ["self-raising"] = SelfRaising,
            ["thickened"] = Thickened,
            ["sulphur"] = Sulphur,
            ["dry yeast"] = DryYeast,
            ["fresh yeast"] = FreshYeast,
            ["milled"] = Milled,
            ["nuts"] = Nuts,
            ["oil film"] = OilFilm,
            ["chocolate"] = Chocolate,
        }
    );
}
