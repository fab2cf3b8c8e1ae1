using System.Diagnostics.CodeAnalysis;

namespace ClassKit.Baking;

/// <summary>The ingredients that ClassKit knows, with composition and household weights.</summary>
/// <remarks>
/// Water: USDA National Nutrient Database for Standard Reference, release 26 (ABBREV). Household weights: release 28 (WEIGHT).
/// USDA's cups and teaspoons of one ingredient were weighed apart and need not agree with each other.
/// Allergens in the words of the US list (FD&amp;C Act 201(qq)).
/// </remarks>
public static class IngredientCatalog
{
    private const string Usda = "USDA SR26 composition, SR28 household weights";

    private static readonly string[] None = [];
    private static readonly string[] Wheat = ["wheat"];
    private static readonly string[] Milk = ["milk"];
    private static readonly string[] Egg = ["egg"];

    /// <summary>All of them, flours first.</summary>
    public static IReadOnlyList<Ingredient> All { get; } =
    [
        new("ap_flour", "All-purpose flour", IngredientRole.Flour, 0.1192, 125, null, Wheat, Usda),
        new("bread_flour", "Bread flour", IngredientRole.Flour, 0.1336, 137, null, Wheat, Usda),
        new("whole_wheat_flour", "Whole wheat flour", IngredientRole.Flour, 0.1074, 120, null, Wheat, Usda),
        new("cake_flour", "Cake flour", IngredientRole.Flour, 0.1251, 137, null, Wheat, Usda + "; cup unsifted, dipped"),

        new("self_rising_flour", "Self-rising flour", IngredientRole.Flour, 0.1059, 125, null, Wheat, Usda + "; its leavening and salt are not counted"),

        new("water", "Water", IngredientRole.Liquid, 1, 237, 29.6 / 6, None, "USDA SR28 household weights; teaspoon: a sixth of a fluid ounce"),
        new("whole_milk", "Whole milk", IngredientRole.Liquid, 0.8813, 244, 244.0 / 48, Milk, Usda + "; teaspoon: 1/48 of the cup"),
        new("milk_2_percent", "Milk, 2 % fat", IngredientRole.Liquid, 0.8921, null, null, Milk, "USDA SR26 composition"),
        new("milk_1_percent", "Milk, 1 % fat", IngredientRole.Liquid, 0.8992, null, null, Milk, "USDA SR26 composition"),
        new("skim_milk", "Skim milk", IngredientRole.Liquid, 0.9084, 245, 245.0 / 48, Milk, Usda + "; teaspoon: 1/48 of the cup"),
        new("buttermilk", "Buttermilk", IngredientRole.Liquid, 0.9013, 245, 245.0 / 48, Milk, Usda + "; teaspoon: 1/48 of the cup") { LacticAcidShare = SourDairy.ButtermilkAcidity },
        new("plain_yogurt", "Plain whole-milk yogurt", IngredientRole.Liquid, 0.8790, 245, 245.0 / 48, Milk, Usda + "; teaspoon: 1/48 of the cup") { LacticAcidShare = SourDairy.YogurtAcidity },
        new("low_fat_yogurt", "Plain low-fat yogurt", IngredientRole.Liquid, 0.8507, 245, 245.0 / 48, Milk, Usda + "; teaspoon: 1/48 of the cup") { LacticAcidShare = SourDairy.YogurtAcidity },
        new("skim_yogurt", "Plain skim-milk yogurt", IngredientRole.Liquid, 0.8523, 245, 245.0 / 48, Milk, Usda + "; teaspoon: 1/48 of the cup") { LacticAcidShare = SourDairy.YogurtAcidity },
        new("greek_yogurt", "Plain nonfat Greek yogurt", IngredientRole.Liquid, 0.8510, null, null, Milk, "USDA SR26 composition") { LacticAcidShare = SourDairy.YogurtAcidity },

        new("whole_egg", "Whole egg", IngredientRole.Egg, 0.7615, null, null, Egg, Usda) { Piece = new("large egg", "large eggs", 50) },
        new("egg_white", "Egg white", IngredientRole.Egg, 0.8757, null, null, Egg, Usda) { Piece = new("large egg white", "large egg whites", 33) },
        new("egg_yolk", "Egg yolk", IngredientRole.Egg, 0.5231, null, null, Egg, Usda) { Piece = new("large egg yolk", "large egg yolks", 17) },

        new("unsalted_butter", "Unsalted butter", IngredientRole.Fat, 0.1794, 227, 14.2 / 3, Milk, Usda + "; teaspoon: a third of the tablespoon") { Piece = new("stick", "sticks", 113) },
        new("salted_butter", "Salted butter", IngredientRole.Fat, 0.1587, 227, 14.2 / 3, Milk, Usda + "; teaspoon: a third of the tablespoon; its salt is not counted") { Piece = new("stick", "sticks", 113) },
        new("vegetable_oil", "Vegetable oil (canola)", IngredientRole.Fat, 0, 218, 218.0 / 48, None, "USDA SR28 household weights; water 0, from memory; teaspoon: 1/48 of the cup"),
        new("olive_oil", "Olive oil", IngredientRole.Fat, 0, 216, 13.5 / 3, None, "USDA SR28 household weights; water 0, from memory; teaspoon: a third of the tablespoon"),

        new("sugar", "Granulated sugar", IngredientRole.Sugar, 0.0002, 200, 4.2, None, Usda),
        new("brown_sugar", "Brown sugar, packed", IngredientRole.Sugar, 0.0134, 220, 220.0 / 48, None, Usda + "; teaspoon: 1/48 of the cup"),
        new("honey", "Honey", IngredientRole.Sugar, 0.171, 339, 339.0 / 48, None, Usda + "; teaspoon: 1/48 of the cup"),

        new("salt", "Fine salt", IngredientRole.Salt, 0.002, 292, 6.0, None, Usda) { SodiumShare = 0.38758 },

        new("baking_soda", "Baking soda", IngredientRole.ChemicalLeavening, 0.002, null, 4.6, None, "USDA SR28 household weights and sodium; water from memory") { SodiumShare = 0.27360 },
        new("baking_powder", "Baking powder, double-acting", IngredientRole.ChemicalLeavening, 0.05, null, 4.6, None, "USDA SR28 household weights; water 5.0 % and sodium 10 600 mg/100 g: USDA, as reprinted at eatm3.com and lovewithrecipes.com") { SodiumShare = 0.106 },
        new("cream_of_tartar", "Cream of tartar", IngredientRole.ChemicalLeavening, 0.017, null, 3.0, None, "USDA SR28 household weights; water from memory"),

        new("instant_yeast", "Instant yeast", IngredientRole.Yeast, 0.05, null, 4.0, None, "AACC 89-01.01: 95 % solids; teaspoon as USDA SR28 for active dry"),
        new("active_dry_yeast", "Active dry yeast", IngredientRole.Yeast, 0.0508, null, 4.0, None, Usda) { Piece = new("packet", "packets", 7.2) },
        new("fresh_yeast", "Fresh (compressed) yeast", IngredientRole.Yeast, 0.69, null, null, None, Usda) { Piece = new("cake", "cakes", 17) },
    ];

    private static readonly Dictionary<string, Ingredient> ById = All.ToDictionary(ingredient => ingredient.Id, StringComparer.Ordinal);

    /// <summary>Looks an ingredient up by its id, letter for letter.</summary>
    /// <param name="id">As lessons write it.</param>
    /// <param name="ingredient">The ingredient; null if there is none.</param>
    public static bool TryFind(string id, [MaybeNullWhen(false)] out Ingredient ingredient) => ById.TryGetValue(id, out ingredient);

    /// <summary>The ingredient of an id that is known to be here.</summary>
    /// <exception cref="KeyNotFoundException">There is none of that id. For text that a user typed use <see cref="TryFind"/>.</exception>
    public static Ingredient Get(string id) => ById[id];
}
