using ClassKit.Baking.Ingredients;
using ClassKit.Baking.Quantities;

namespace ClassKit.Baking.Household;

/// <summary>
/// How much all-purpose flour a cup holds. It depends on how the cup is filled, and lists disagree, so it is a named setting.
/// </summary>
/// <param name="Name">What the setting is called.</param>
/// <param name="Cup">The flour in a US cup.</param>
/// <param name="Source">Where it is published.</param>
public sealed record FlourCup(string Name, Mass Cup, string Source)
{
    /// <summary>125 g: the default, as in the catalog.</summary>
    public static FlourCup Usda { get; } = new("USDA", Mass.FromGrams(125), "USDA SR28 household weights");

    /// <summary>5 oz, 142 g: packed as a cup dipped into the bin is.</summary>
    public static FlourCup FiveOunces { get; } = new("5 oz", Mass.FromOunces(5), "trade lists quoted beside the USDA's weights");

    /// <summary>A quarter of a pound, 113 g: sifted or spooned lightly.</summary>
    public static FlourCup QuarterPound { get; } =
        new(
            "1/4 lb",
            Mass.FromPounds(0.25),
            "trade lists quoted beside the USDA's weights; 112 g: B. Lowe, Experimental Cookery, cream puffs"
        );

    /// <summary>All of the settings, the default first.</summary>
    public static IReadOnlyList<FlourCup> All { get; } = [Usda, FiveOunces, QuarterPound];

    /// <summary>An ingredient with this cup in place of its own; for flours only.</summary>
    public Ingredient Applied(Ingredient flour)
    {
        ArgumentNullException.ThrowIfNull(flour);
        return flour.Role == IngredientRole.Flour && flour.GramsPerCup is not null
            ? flour with
            {
                GramsPerCup = Cup.Grams,
                CupFilling = null,
                Source = $"{flour.Source}; cup: {Source}",
            }
            : flour;
    }
}
