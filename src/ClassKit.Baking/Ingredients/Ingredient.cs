using ClassKit.Baking.Allergens;
using ClassKit.Baking.Quantities;

namespace ClassKit.Baking.Ingredients;

/// <summary>What something on the bench is made of, as far as the computations need it.</summary>
/// <param name="Id">How lessons name it: lower-case letters, digits and underscores.</param>
/// <param name="Name">How pages name it.</param>
/// <param name="Role">What it does in a dough; all <see cref="IngredientRole.Flour"/> together is 100 %.</param>
/// <param name="WaterShare">Water by mass, 0 to 1.</param>
/// <param name="GramsPerCup">The mass of a US cup (236.588 mL) as measured in a kitchen; null where cups make no sense.</param>
/// <param name="GramsPerTeaspoon">The mass of a US teaspoon (4.929 mL); null where teaspoons make no sense.</param>
/// <param name="Allergens">What must be declared of it by its nature. Nothing here never means that a product holds nothing: see
/// <see cref="Doubts"/>, and its label.</param>
/// <param name="Source">Where the figures come from.</param>
public sealed record Ingredient(
    string Id,
    string Name,
    IngredientRole Role,
    double WaterShare,
    double? GramsPerCup,
    double? GramsPerTeaspoon,
    IReadOnlyList<Allergen> Allergens,
    string Source
)
{
    /// <summary>What it is made of besides water; null where that is not known.</summary>
    public FoodSolids? Solids { get; init; }

    /// <summary>The flour that a starter was built from; null for anything that is no starter.</summary>
    public Ingredient? StarterOf { get; init; }

    /// <summary>Of a starter, the share of its mass that was flour, 0 to 1; 0 for anything else.</summary>
    public double StarterFlourShare { get; init; }

    /// <summary>How much of it counts among the 100 %: all of a flour, and what flour a starter holds.</summary>
    public double FlourShare => Role == IngredientRole.Flour ? 1 : StarterFlourShare;

    /// <summary>Sugars by mass, 0 to 1; null where they are not known.</summary>
    public double? SugarShare { get; init; }

    /// <summary>What the pantry calls it, where an author's text has it by another of its names; null where <see cref="Name"/> is that.</summary>
    public string? PantryName { get; init; }

    /// <summary>What price lists call it; null where they use its name.</summary>
    public string? PriceName { get; init; }

    /// <summary>
    /// How the cup of <see cref="GramsPerCup"/> is filled, or what is in it: <c>dipped</c>, <c>packed</c>, <c>chopped</c>; null where that
    /// is not known or makes no difference. A cup of flour differs by a fifth with it.
    /// </summary>
    public string? CupFilling { get; init; }

    /// <summary>How a kitchen counts it; null where nothing is counted.</summary>
    public HouseholdPiece? Piece { get; init; }

    /// <summary>Sodium by mass, 0 to 1; null where it is not counted.</summary>
    public double? SodiumShare { get; init; }

    /// <summary>Its acid as a share of lactic acid by mass, 0 to 1; null if it neutralises no soda worth counting.</summary>
    public Band<double>? LacticAcidShare { get; init; }

    /// <summary>How it makes gas without yeast; null of what makes none.</summary>
    public RaisingPower? Raises { get; init; }

    /// <summary>Grams of soda that 100 g of it neutralise, as bakers tell it of an acid; null if it is none.</summary>
    public double? NeutralizingValue { get; init; }

    /// <summary>What it may hold besides, as far as is known here.</summary>
    public IReadOnlyList<AllergenDoubt> Doubts { get; init; } = [];

    /// <summary>Whether it is kept cold, where its row says so; null where it follows from what it is. See <c>Keeping</c>.</summary>
    public bool? IsSaidCold { get; init; }

    /// <summary>What a method may call it, in the singular and in small letters: <c>milk</c>, <c>fat</c>.</summary>
    public IReadOnlyList<string> OtherNames { get; init; } = [];
}
