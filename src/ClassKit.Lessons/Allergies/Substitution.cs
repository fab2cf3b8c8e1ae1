using ClassKit.Baking.Allergens;
using ClassKit.Baking.Formulas;
using ClassKit.Baking.Ingredients;
using ClassKit.Baking.Quantities;
using ClassKit.Lessons.Cards;

namespace ClassKit.Lessons.Allergies;

/// <summary>A published way to do without an ingredient.</summary>
/// <param name="IngredientIds">What it stands in for.</param>
/// <param name="Instead">What to take, in the published measures.</param>
/// <param name="Fits">The leavenings it is published for; empty for any.</param>
/// <param name="TakesIds">What it is made of, as far as the catalogue has it.</param>
/// <param name="MostPieces">Of what is counted, at most so many in a batch; null for no limit.</param>
/// <param name="Source">Where it is published.</param>
public sealed record Substitution(
    IReadOnlyList<string> IngredientIds,
    string Instead,
    IReadOnlyList<Leavening> Fits,
    IReadOnlyList<string> TakesIds,
    double? MostPieces,
    string Source
)
{
    /// <summary>All that are known here. There are none for wheat flour, nor for buttermilk: its acid would be missing.</summary>
    public static IReadOnlyList<Substitution> All { get; } =
    [
        new(
            ["whole_egg"],
            "for each egg 1½ tablespoons of oil, 1½ tablespoons of water and 1 teaspoon of baking powder",
            [Leavening.Chemical],
            ["vegetable_oil", "water", "baking_powder"],
            2,
            "PowerUp for Kids, which rules it out for three eggs and more"
        ),
        new(
            ["whole_milk", "milk_2_percent", "milk_1_percent", "skim_milk"],
            "for each cup of milk a cup of water or fruit juice and 1 teaspoon of oil",
            [],
            ["water", "vegetable_oil"],
            null,
            "\"Baking Substitution Guide\", as reprinted"
        )
        {
            NotInCatalog = "the juice",
        },
        new(
            ["unsalted_butter", "salted_butter"],
            "for each cup of butter 7/8 cup of oil",
            [],
            ["vegetable_oil"],
            null,
            "Yummy, So Easy Sweets (2009), reprinted at yummy.ph"
        ),
        new(
            ["cake_flour"],
            "for each cup of cake flour a cup less 2 tablespoons of sifted all-purpose flour",
            [],
            ["ap_flour"],
            null,
            "Summit County Farm Bureau, 20 November 2019"
        ),
        new(
            ["ap_flour"],
            "for each cup of all-purpose flour a cup and 2 tablespoons of cake flour",
            [],
            ["cake_flour"],
            null,
            "Summit County Farm Bureau, 20 November 2019"
        ),
        new(["buttermilk"], "the same measure of plain yogurt", [], ["plain_yogurt"], null, "Summit County Farm Bureau, 20 November 2019"),
        new(["plain_yogurt"], "the same measure of buttermilk", [], ["buttermilk"], null, "Summit County Farm Bureau, 20 November 2019"),
    ];

    /// <summary>For fat that only greases: no bread is made of it, and no measure of it matters.</summary>
    private static Substitution Grease { get; } =
        new(["unsalted_butter", "salted_butter"], "oil, brushed on thinly", [], ["vegetable_oil"], null, "common practice, no source");

    /// <summary>What it is made of that the catalogue does not know; empty for nothing.</summary>
    public string NotInCatalog { get; init; } = "";

    /// <summary>A stand-in for an ingredient of a batch; null where none is published, or not for this much of it.</summary>
    /// <param name="line">The ingredient and how much of it.</param>
    /// <param name="leavening">What raises the bread.</param>
    public static Substitution? For(BatchLine line, Leavening leavening)
    {
        ArgumentNullException.ThrowIfNull(line);
        return Published(line.Ingredient, line.Exact, leavening).FirstOrDefault();
    }

    /// <summary>
    /// The stand-in that brings least of what the class names, made of what the kitchen has; one that is declared to hold what it is to
    /// avoid is never offered.
    /// </summary>
    internal static StandIn? StandInFor(
        Ingredient ingredient,
        FormulaCard card,
        AllergenWord need,
        IReadOnlyList<AllergenWord> needs,
        Pantry pantry
    )
    {
        var isInDough = card.Batch.Lines.Any(line => line.Ingredient.Id == ingredient.Id);
        var mass = Mass.FromGrams(card.Batch.Lines.Where(line => line.Ingredient.Id == ingredient.Id).Sum(line => line.Exact.Grams));
        return (
            isInDough ? Published(ingredient, mass, card.Bread.Formula.Leavening)
            : Grease.IngredientIds.Contains(ingredient.Id) ? [Grease]
            : []
        ).Where(known => !known.Takes(pantry).Any(taken => taken.Allergens.Any(need.Means.Contains))).Select(known => known.Against(needs, pantry)).MinBy(standIn => standIn.Brings.Count);
    }

    /// <summary>
    /// What it is made of as this kitchen buys it: its own row of the oil may hold what the shipped one does not. What ships is in every pantry.
    /// </summary>
    private IEnumerable<Ingredient> Takes(Pantry pantry) =>
        TakesIds.Select(id => pantry.TryFind(id, out var taken) ? taken : throw new KeyNotFoundException(id));

    private StandIn Against(IReadOnlyList<AllergenWord> needs, Pantry pantry) =>
        new(
            this,
            [
                .. Takes(pantry)
                    .SelectMany(taken => taken.Allergens)
                    .Where(allergen => needs.Any(need => need.Means.Contains(allergen)))
                    .Distinct(),
            ],
            [
                .. Takes(pantry)
                    .SelectMany(taken =>
                        taken
                            .Doubts.Where(doubt => AllergyConcern.Touches(doubt, needs))
                            .Select(doubt => (taken.Name.ToLowerInvariant(), doubt.Why))
                    ),
                .. NotInCatalog.Length > 0 ? [(NotInCatalog, "nothing is known of it here")] : Array.Empty<(string, string)>(),
            ]
        );

    private static IEnumerable<Substitution> Published(Ingredient ingredient, Mass mass, Leavening leavening) =>
        All.Where(known =>
            known.IngredientIds.Contains(ingredient.Id)
            && (known.Fits.Count == 0 || known.Fits.Contains(leavening))
            && (known.MostPieces is not { } most || ingredient.Piece is not { } piece || mass.Grams / piece.Grams <= most)
        );
}
