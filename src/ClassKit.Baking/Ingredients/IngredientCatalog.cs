using System.Diagnostics.CodeAnalysis;
using ClassKit.Baking.Allergens;

namespace ClassKit.Baking.Ingredients;

/// <summary>The ingredients that ClassKit knows, with composition and household weights.</summary>
/// <remarks>
/// Water: USDA National Nutrient Database for Standard Reference, release 26 (ABBREV). Household weights: release 28 (WEIGHT).
/// USDA's cups and teaspoons of one ingredient were weighed apart and agree within a twentieth, but for yeast: see <see cref="DryYeastTeaspoon"/>.
/// Allergens: what the food itself is in the words of <see cref="AllergenCatalog"/>; what a maker may add or leave in is a doubt. Starch, oil and malt are known to differ by maker.
/// </remarks>
public static class IngredientCatalog
{
    private const string Usda = "USDA SR26 composition, SR28 household weights";

    /// <summary>
    /// USDA's teaspoon of 4.0 g and packet of 7.2 g do not go together: 2 1/4 teaspoons would be 9 g. Whoever measures by the spoon has the packet in hand, and that says both.
    /// </summary>
    private const double DryYeastTeaspoon = 7 / 2.25;

    private const string Packet = "what packets of dry yeast say of themselves: 7 g, 2 1/4 teaspoons";

    private static readonly Allergen[] None = [];
    private static readonly Allergen[] Wheat = [AllergenCatalog.Wheat];
    private static readonly Allergen[] Milk = [AllergenCatalog.Milk];
    private static readonly Allergen[] Egg = [AllergenCatalog.Egg];

    private static readonly string[] CalledMilk = ["milk"];
    private static readonly string[] CalledYogurt = ["yogurt", "yoghurt"];
    private static readonly string[] CalledButter = ["butter", "fat"];

    /// <summary>All of them, flours first.</summary>
    public static IReadOnlyList<Ingredient> All { get; } =
    [
        new("ap_flour", "All-purpose flour", IngredientRole.Flour, 0.1192, 125, null, Wheat, Usda) { Doubts = IngredientDoubts.MaltedFlour, OtherNames = ["flour", "plain flour", "white flour"] },
        new("bread_flour", "Bread flour", IngredientRole.Flour, 0.1336, 137, null, Wheat, Usda) { Doubts = IngredientDoubts.MaltedFlour, OtherNames = ["flour", "strong flour", "white flour"] },
        new("whole_wheat_flour", "Whole wheat flour", IngredientRole.Flour, 0.1074, 120, null, Wheat, Usda) { Doubts = IngredientDoubts.MaltedFlour, OtherNames = ["flour", "wholemeal flour", "wholemeal", "whole-wheat flour"] },
        new("cake_flour", "Cake flour", IngredientRole.Flour, 0.1251, 137, null, Wheat, Usda + "; cup unsifted, dipped") { Doubts = IngredientDoubts.MaltedFlour, OtherNames = ["flour"] },

        new("self_rising_flour", "Self-rising flour", IngredientRole.Flour, 0.1059, 125, null, Wheat, Usda + "; its leavening and salt are not counted") { Doubts = IngredientDoubts.SelfRaising, OtherNames = ["flour", "self-raising flour"] },

        new("water", "Water", IngredientRole.Liquid, 1, 237, 29.6 / 6, None, "USDA SR28 household weights; teaspoon: a sixth of a fluid ounce"),
        new("whole_milk", "Whole milk", IngredientRole.Liquid, 0.8813, 244, 244.0 / 48, Milk, Usda + "; teaspoon: 1/48 of the cup") { OtherNames = CalledMilk },
        new("milk_2_percent", "Milk, 2 % fat", IngredientRole.Liquid, 0.8921, 244, 30.5 / 6, Milk, Usda + "; teaspoon: a sixth of a fluid ounce") { OtherNames = CalledMilk },
        new("milk_1_percent", "Milk, 1 % fat", IngredientRole.Liquid, 0.8992, 244, 30.5 / 6, Milk, Usda + "; teaspoon: a sixth of a fluid ounce") { OtherNames = CalledMilk },
        new("skim_milk", "Skim milk", IngredientRole.Liquid, 0.9084, 245, 245.0 / 48, Milk, Usda + "; teaspoon: 1/48 of the cup") { OtherNames = CalledMilk },
        new("buttermilk", "Buttermilk", IngredientRole.Liquid, 0.9013, 245, 245.0 / 48, Milk, Usda + "; teaspoon: 1/48 of the cup") { LacticAcidShare = SourDairy.ButtermilkAcidity, Doubts = IngredientDoubts.Thickened },
        new("plain_yogurt", "Plain whole-milk yogurt", IngredientRole.Liquid, 0.8790, 245, 245.0 / 48, Milk, Usda + "; teaspoon: 1/48 of the cup") { LacticAcidShare = SourDairy.YogurtAcidity, Doubts = IngredientDoubts.Thickened, OtherNames = CalledYogurt },
        new("low_fat_yogurt", "Plain low-fat yogurt", IngredientRole.Liquid, 0.8507, 245, 245.0 / 48, Milk, Usda + "; teaspoon: 1/48 of the cup") { LacticAcidShare = SourDairy.YogurtAcidity, Doubts = IngredientDoubts.Thickened, OtherNames = CalledYogurt },
        new("skim_yogurt", "Plain skim-milk yogurt", IngredientRole.Liquid, 0.8523, 245, 245.0 / 48, Milk, Usda + "; teaspoon: 1/48 of the cup") { LacticAcidShare = SourDairy.YogurtAcidity, Doubts = IngredientDoubts.Thickened, OtherNames = CalledYogurt },
        new("greek_yogurt", "Plain nonfat Greek yogurt", IngredientRole.Liquid, 0.8510, null, null, Milk, "USDA SR26 composition") { LacticAcidShare = SourDairy.YogurtAcidity, Doubts = IngredientDoubts.Thickened, OtherNames = CalledYogurt },

        new("whole_egg", "Whole egg", IngredientRole.Egg, 0.7615, null, null, Egg, Usda) { Piece = new("large egg", "large eggs", 50), OtherNames = ["egg", "egg white", "egg yolk", "yolk", "egg wash"] },
        new("egg_white", "Egg white", IngredientRole.Egg, 0.8757, null, null, Egg, Usda) { Piece = new("large egg white", "large egg whites", 33), OtherNames = ["egg", "white of egg"] },
        new("egg_yolk", "Egg yolk", IngredientRole.Egg, 0.5231, null, null, Egg, Usda) { Piece = new("large egg yolk", "large egg yolks", 17), OtherNames = ["egg", "yolk", "egg wash"] },

        new("unsalted_butter", "Unsalted butter", IngredientRole.Fat, 0.1794, 227, 14.2 / 3, Milk, Usda + "; teaspoon: a third of the tablespoon") { Piece = new("stick", "sticks", 113), OtherNames = CalledButter },
        new("salted_butter", "Salted butter", IngredientRole.Fat, 0.1587, 227, 14.2 / 3, Milk, Usda + "; teaspoon: a third of the tablespoon; its salt is not counted") { Piece = new("stick", "sticks", 113), OtherNames = CalledButter },
        new("vegetable_oil", "Vegetable oil (canola)", IngredientRole.Fat, 0, 218, 4.5, None, "USDA SR28 household weights; water 0, from memory") { Doubts = IngredientDoubts.RefinedOil, OtherNames = ["oil", "neutral oil", "vegetable oil", "canola oil", "rapeseed oil", "fat"] },
        new("olive_oil", "Olive oil", IngredientRole.Fat, 0, 216, 4.5, None, "USDA SR28 household weights; water 0, from memory") { Doubts = IngredientDoubts.BlendedOil, OtherNames = ["oil", "fat"] },

        new("sugar", "Granulated sugar", IngredientRole.Sugar, 0.0002, 200, 4.2, None, Usda) { OtherNames = ["sugar", "white sugar", "caster sugar"] },
        new("brown_sugar", "Brown sugar, packed", IngredientRole.Sugar, 0.0134, 220, 4.6, None, Usda + "; cup and teaspoon packed") { Doubts = IngredientDoubts.Sulphur, OtherNames = ["sugar", "brown sugar"] },
        new("honey", "Honey", IngredientRole.Sugar, 0.171, 339, 21.0 / 3, None, Usda + "; teaspoon: a third of the tablespoon"),

        new("salt", "Fine salt", IngredientRole.Salt, 0.002, 292, 6.0, None, Usda) { SodiumShare = 0.38758, OtherNames = ["salt"] },

        new("baking_soda", "Baking soda", IngredientRole.ChemicalLeavening, 0.002, null, 4.6, None, "USDA SR28 household weights and sodium; water from memory") { SodiumShare = 0.27360, OtherNames = ["soda", "bicarbonate of soda"] },
        new("baking_powder", "Baking powder, double-acting", IngredientRole.ChemicalLeavening, 0.05, null, 4.6, None, "USDA SR28 household weights; water 5.0 % and sodium 10 600 mg/100 g: USDA, as reprinted") { SodiumShare = 0.106, Doubts = IngredientDoubts.Starch, OtherNames = ["baking powder", "powder"] },
        new("cream_of_tartar", "Cream of tartar", IngredientRole.ChemicalLeavening, 0.017, null, 3.0, None, "USDA SR28 household weights; water from memory") { Doubts = IngredientDoubts.Sulphur },

        new("instant_yeast", "Instant yeast", IngredientRole.Yeast, 0.05, null, DryYeastTeaspoon, None, "AACC 89-01.01: 95 % solids; " + Packet) { Doubts = IngredientDoubts.DryYeast, OtherNames = ["yeast"] },
        new("active_dry_yeast", "Active dry yeast", IngredientRole.Yeast, 0.0508, null, DryYeastTeaspoon, None, "USDA SR26 composition; " + Packet) { Piece = new("packet", "packets", 7), Doubts = IngredientDoubts.DryYeast, OtherNames = ["yeast", "dry yeast"] },
        new("fresh_yeast", "Fresh (compressed) yeast", IngredientRole.Yeast, 0.69, null, null, None, Usda) { Piece = new("cake", "cakes", 17), Doubts = IngredientDoubts.FreshYeast, OtherNames = ["yeast", "compressed yeast", "fresh yeast"] },

        // For tins, boards and tops.
        new("semolina", "Semolina", IngredientRole.Flour, 0.1267, 167, null, Wheat, Usda + "; NDB 20066"),
        new("rye_flour", "Rye flour", IngredientRole.Flour, 0.1097, 102, null, [AllergenCatalog.Rye], Usda + "; NDB 20064, medium") { Doubts = IngredientDoubts.Milled, OtherNames = ["flour"] },
        new("rice_flour", "Rice flour", IngredientRole.Flour, 0.1189, 158, null, None, Usda + "; NDB 20061, white") { Doubts = IngredientDoubts.Milled, OtherNames = ["flour"] },
        new("cornmeal", "Cornmeal", IngredientRole.Flour, 0.1118, 157, null, None, Usda + "; NDB 20022, yellow, degermed") { Doubts = IngredientDoubts.Milled, OtherNames = ["polenta", "maize meal"] },
        new("oats", "Oats", IngredientRole.Other, 0.0822, 156, null, [AllergenCatalog.Oats], Usda + "; NDB 20038") { Doubts = IngredientDoubts.Milled, OtherNames = ["rolled oat", "oat"] },
        new("shortening", "Vegetable shortening", IngredientRole.Fat, 0, 205, 12.8 / 3, None, Usda + "; NDB 04031; teaspoon: a third of the tablespoon") { Doubts = IngredientDoubts.Shortening, OtherNames = ["shortening", "fat"] },
        new("lard", "Lard", IngredientRole.Fat, 0, 205, 12.8 / 3, None, Usda + "; NDB 04002; teaspoon: a third of the tablespoon") { OtherNames = ["fat"] },
        new("powdered_sugar", "Powdered sugar", IngredientRole.Sugar, 0.0023, 120, 2.5, None, Usda + "; NDB 19336, unsifted") { Doubts = IngredientDoubts.Starch, OtherNames = ["icing sugar", "confectioners sugar", "sugar"] },
        new("sesame_seeds", "Sesame seeds", IngredientRole.Other, 0.0469, 144, 9.0 / 3, [AllergenCatalog.Sesame], Usda + "; NDB 12023; teaspoon: a third of the tablespoon") { OtherNames = ["sesame", "sesame seed"] },
        new("almonds", "Almonds", IngredientRole.Other, 0.0441, 143, null, [AllergenCatalog.Almond], Usda + "; NDB 12061, whole") { Doubts = IngredientDoubts.Nuts, OtherNames = ["almond", "nut"] },
        new("walnuts", "Walnuts", IngredientRole.Other, 0.0407, 117, null, [AllergenCatalog.Walnut], Usda + "; NDB 12155, chopped") { Doubts = IngredientDoubts.Nuts, OtherNames = ["walnut", "nut"] },
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
