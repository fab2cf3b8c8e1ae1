using ClassKit.Baking;

namespace ClassKit.Lessons;

/// <summary>A published way to do without an ingredient.</summary>
/// <param name="IngredientIds">What it stands in for.</param>
/// <param name="Instead">What to take, in the published measures.</param>
/// <param name="Fits">The leavenings it is published for; empty for any.</param>
/// <param name="BringsAllergens">What the stand-in itself holds.</param>
/// <param name="MostPieces">Of what is counted, at most so many in a batch; null for no limit.</param>
/// <param name="Source">Where it is published.</param>
public sealed record Substitution(
    IReadOnlyList<string> IngredientIds,
    string Instead,
    IReadOnlyList<Leavening> Fits,
    IReadOnlyList<string> BringsAllergens,
    double? MostPieces,
    string Source)
{
    /// <summary>All that are known here. There are none for wheat flour, nor for buttermilk: its acid would be missing.</summary>
    public static IReadOnlyList<Substitution> All { get; } =
    [
        new(["whole_egg"], "for each egg 1½ tablespoons of oil, 1½ tablespoons of water and 1 teaspoon of baking powder", [Leavening.Chemical], [], 2, "powerup4kids.org, RecipeDetail 272, which rules it out for three eggs and more"),
        new(["whole_milk", "milk_2_percent", "milk_1_percent", "skim_milk"], "for each cup of milk a cup of water or fruit juice and 1 teaspoon of oil", [], [], null, "Baking Substitution Guide, docslib.org/doc/11315067"),
        new(["unsalted_butter", "salted_butter"], "for each cup of butter 7/8 cup of oil", [], [], null, "Yummy, So Easy Sweets (2009), reprinted at yummy.ph"),
        new(["cake_flour"], "for each cup of cake flour a cup less 2 tablespoons of sifted all-purpose flour", [], ["wheat"], null, "summitcountyfarmbureau.org, 2019-11-20, and browneyedbaker.com/substitutions"),
        new(["ap_flour"], "for each cup of all-purpose flour a cup and 2 tablespoons of cake flour", [], ["wheat"], null, "summitcountyfarmbureau.org, 2019-11-20"),
        new(["buttermilk"], "the same measure of plain yogurt", [], ["milk"], null, "summitcountyfarmbureau.org, 2019-11-20"),
        new(["plain_yogurt"], "the same measure of buttermilk", [], ["milk"], null, "summitcountyfarmbureau.org, 2019-11-20"),
    ];

    /// <summary>A stand-in for an ingredient of a batch that is free of an allergen; null where none is published, or not for this much of it.</summary>
    /// <param name="line">The ingredient and how much of it.</param>
    /// <param name="leavening">What raises the bread.</param>
    /// <param name="free">The allergen; null if any will do.</param>
    public static Substitution? For(BatchLine line, Leavening leavening, string? free)
    {
        ArgumentNullException.ThrowIfNull(line);
        return All.FirstOrDefault(known => known.IngredientIds.Contains(line.Ingredient.Id)
            && (known.Fits.Count == 0 || known.Fits.Contains(leavening))
            && (free is null || !known.BringsAllergens.Contains(free))
            && (known.MostPieces is not { } most || line.Ingredient.Piece is not { } piece || line.Exact.Grams / piece.Grams <= most));
    }
}
