using ClassKit.Baking.Formulas;
using ClassKit.Baking.Ingredients;
using CsCheck;

namespace ClassKit.Baking.Tests;

/// <summary>Formulas in print, and the three of the leavening lesson.</summary>
internal static class Doughs
{
    /// <summary>100/67/2/1: college worksheet "Baker's Percentage Worksheet", author and year not known.</summary>
    public static BakersFormula Worksheet { get; } =
        Of("worksheet", Leavening.Yeast, ("bread_flour", 100), ("water", 67), ("salt", 2), ("instant_yeast", 1));

    /// <summary>50/20/30 of three flours, 70, 1.5, 2: a tutorial's sum, common practice.</summary>
    public static BakersFormula ThreeFlours { get; } =
        Of(
            "three_flours",
            Leavening.Yeast,
            ("bread_flour", 50),
            ("whole_wheat_flour", 20),
            ("ap_flour", 30),
            ("water", 70),
            ("instant_yeast", 1.5),
            ("salt", 2)
        );

    public static BakersFormula Popovers { get; } =
        Of("popovers", Leavening.Steam, ("ap_flour", 100), ("whole_milk", 200), ("whole_egg", 120), ("unsalted_butter", 12), ("salt", 2));

    public static BakersFormula Buns { get; } =
        Of(
            "buns",
            Leavening.Yeast,
            ("ap_flour", 100),
            ("whole_milk", 70),
            ("whole_egg", 12),
            ("unsalted_butter", 8),
            ("sugar", 6),
            ("salt", 1.8),
            ("instant_yeast", 1.5)
        );

    public static BakersFormula Muffins { get; } =
        Of(
            "muffins",
            Leavening.Chemical,
            ("ap_flour", 100),
            ("buttermilk", 95),
            ("whole_egg", 20),
            ("unsalted_butter", 22),
            ("sugar", 18),
            ("baking_powder", 2.5),
            ("baking_soda", 0.8),
            ("salt", 1.2)
        );

    public static BakersFormula Of(string id, Leavening leavening, params (string Ingredient, double Percent)[] lines) =>
        new(id, id, leavening, [.. lines.Select(line => new FormulaLine(IngredientCatalog.Get(line.Ingredient), line.Percent))]);

    public static Gen<T> AnyOf<T>(params T[] choices) => Gen.Int[0, choices.Length - 1].Select(at => choices[at]);
}
