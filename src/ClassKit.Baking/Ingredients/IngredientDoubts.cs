using ClassKit.Baking.Allergens;

namespace ClassKit.Baking.Ingredients;

/// <summary>What may be in the ingredients of the catalogue without standing in their names.</summary>
internal static class IngredientDoubts
{
    private const string Memory = "from memory";

    /// <summary>Any product may have been near anything; these are the cases that bakers meet.</summary>
    public static AllergenDoubt[] MaltedFlour { get; } = [new([AllergenCatalog.Barley], "malted barley flour may be added", "21 CFR 137.105, 137.165 and 137.200")];

    public static AllergenDoubt[] RefinedOil { get; } =
    [
        new(
            [AllergenCatalog.Soya, AllergenCatalog.Peanut, .. AllergenCatalog.Of(AllergenGroup.Nuts), AllergenCatalog.Sesame],
            "which seed or nut it is pressed from; oils refined in full need not be declared (soybean in the EU, any in the US), others must",
            "Regulation (EU) 1169/2011, Annex II, 6 (a); US FD&C Act 201(qq)(2)(A)"),
    ];

    public static AllergenDoubt[] BlendedOil { get; } = [new([], "it may be blended with other oils", Memory)];

    public static AllergenDoubt[] Shortening { get; } = [new([AllergenCatalog.Soya, AllergenCatalog.Milk], "which fats and emulsifiers it is made of", Memory)];

    public static AllergenDoubt[] Starch { get; } = [new([AllergenCatalog.Wheat], "its starch may be of wheat", Memory)];

    public static AllergenDoubt[] SelfRaising { get; } = [.. MaltedFlour, new([], "what its raising agents are carried on", Memory)];

    public static AllergenDoubt[] Thickened { get; } = [new([], "it may be thickened or stabilised", Memory)];

    public static AllergenDoubt[] Sulphur { get; } = [new([AllergenCatalog.Sulphites], "sulphites may be left from its making", Memory)];

    public static AllergenDoubt[] DryYeast { get; } = [new([], "its emulsifier, and what the yeast was grown on", Memory)];

    public static AllergenDoubt[] FreshYeast { get; } = [new([AllergenCatalog.Wheat, AllergenCatalog.Barley], "what the yeast was grown on", Memory)];

    public static AllergenDoubt[] Milled { get; } = [new([AllergenCatalog.Wheat], "it is often milled and packed where wheat is", Memory)];

    public static AllergenDoubt[] Nuts { get; } = [new(AllergenCatalog.Of(AllergenGroup.Nuts), "nuts are often shelled and packed together", Memory), new([AllergenCatalog.Peanut], "nuts are often packed where peanuts are", Memory)];
}
