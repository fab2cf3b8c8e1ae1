using ClassKit.Baking.Explanations;
using ClassKit.Baking.Formulas;
using ClassKit.Baking.Household;
using ClassKit.Baking.Ingredients;
using ClassKit.Baking.Quantities;
using ClassKit.Lessons.Authored;
using ClassKit.Lessons.Cards;
using ClassKit.Lessons.Classes;

namespace ClassKit.Lessons.Purchasing;

/// <summary>One ingredient for the whole class.</summary>
/// <param name="Ingredient">What; its allergens are in it.</param>
/// <param name="Mass">What everybody weighs for all formulas.</param>
/// <param name="Uses">How much of it each formula takes, for all teams, with what greases, dusts and glazes it.</param>
/// <param name="Household">The mass in cups, spoons or whole eggs; null where none fits.</param>
/// <param name="PoundsAndOunces">The mass on a US scale, to the quarter ounce; null below an ounce.</param>
public sealed record RequisitionLine(
    Ingredient Ingredient,
    Mass Mass,
    IReadOnlyList<RequisitionUse> Uses,
    HouseholdMeasure? Household,
    string? PoundsAndOunces
)
{
    /// <summary>How much of it the demonstrations take; it is in <see cref="Mass"/>.</summary>
    public Mass Shown { get; init; }

    /// <summary>The fryers that are filled with it; it is in <see cref="Mass"/>. Null where nothing is fried in it.</summary>
    public FryerFilling? Filling { get; init; }

    /// <summary>What to buy for it; null where there is no price.</summary>
    public Purchase? Purchase { get; init; }

    internal static IReadOnlyList<RequisitionLine> For(
        IReadOnlyList<FormulaCard> cards,
        IReadOnlyList<LessonDemonstration> demonstrations,
        ClassProfile profile
    )
    {
        var shown = demonstrations.SelectMany(each => each.Ingredients).ToLookup(line => line.Ingredient.Id);
        var fillings = FryerFilling.Of(cards, profile).ToDictionary(filling => filling.Fat.Id);
        var uses = cards
            .SelectMany(card =>
                card.Batch.Lines.SelectMany(line => Bought(card, line))
                    .Concat(
                        card.Surfaces.Select(taken =>
                            (card.Bread, taken.Surface.Ingredient, Mass: taken.IsFryers ? default : Times(taken.Mass, card.Loads))
                        )
                    )
            )
            .GroupBy(use => use.Ingredient.Id)
            .ToList();
        return
        [
            .. uses.Select(group =>
                Line(
                    CalledAlike([.. group.Select(use => use.Ingredient), .. shown[group.Key].Select(each => each.Ingredient)]),
                    [
                        .. group
                            .GroupBy(use => use.Bread.Formula.Id)
                            .Select(of => new RequisitionUse(of.First().Bread, Sum(of.Select(use => use.Mass))))
                            .Where(use => use.Mass.Grams > 0),
                    ],
                    Sum(shown[group.Key].Select(each => each.Mass)),
                    fillings.GetValueOrDefault(group.Key)
                )
            ),
            .. shown
                .Where(lines => uses.All(group => group.Key != lines.Key))
                .Select(lines =>
                    Line(CalledAlike([.. lines.Select(each => each.Ingredient)]), [], Sum(lines.Select(each => each.Mass)), null)
                ),
        ];
    }

    /// <summary>The lines with what to buy, or why one cannot be bought.</summary>
    internal static Computed<IReadOnlyList<RequisitionLine>> Priced(IReadOnlyList<RequisitionLine> lines, PriceList? prices)
    {
        List<RequisitionLine> priced = [];
        foreach (var line in lines)
        {
            if (prices is null || !prices.Packs.TryGetValue(line.Ingredient.Id, out var pack))
                priced.Add(line);
            else if (Purchase.Of(pack, line.Mass).TryGet(out var purchase, out var why))
                priced.Add(line with { Purchase = purchase });
            else
                return why with { Message = $"{line.Ingredient.Name}: {why.Message}" };
        }
        return priced;
    }

    /// <summary>A starter that is built is bought as ripe starter, flour and water.</summary>
    private static IEnumerable<(LessonFormula Bread, Ingredient Ingredient, Mass Mass)> Bought(FormulaCard card, BatchLine line) =>
        card.BuildOf(line) is { Count: > 0 } build
            ? build.Select(part => (card.Bread, part.Ingredient, Times(part.Mass, card.Loads)))
            : [(card.Bread, line.Ingredient, Times(Larger(line), card.Loads))];

    /// <summary>
    /// One ingredient under one name: as the breads call it where all call it alike, else as the pantry does, whichever bread comes first.
    /// </summary>
    private static Ingredient CalledAlike(IReadOnlyList<Ingredient> uses) =>
        uses.All(use => use.Name == uses[0].Name) ? uses[0]
        : uses.FirstOrDefault(use => use.PantryName is null) is { } asInPantry ? asInPantry
        : uses[0] with { Name = uses[0].PantryName! };

    /// <summary>What the scale cannot show is bought all the same.</summary>
    private static Mass Larger(BatchLine line) => line.IsBelowScale ? line.Exact : line.Weighed;

    private static RequisitionLine Line(Ingredient ingredient, IReadOnlyList<RequisitionUse> uses, Mass shown, FryerFilling? filling)
    {
        var mass = Sum(uses.Select(use => use.Mass).Append(shown).Append(filling?.Mass ?? default));
        return new(ingredient, mass, uses, HouseholdMeasures.ToBuy(ingredient, mass), CardLine.Ounces(mass))
        {
            Shown = shown,
            Filling = filling,
        };
    }

    /// <summary>In decimal, so that six times 6.7 g are 40.2 g.</summary>
    private static Mass Times(Mass mass, int loads) => Mass.FromGrams((double)((decimal)mass.Grams * loads));

    private static Mass Sum(IEnumerable<Mass> masses) => Mass.FromGrams((double)masses.Sum(mass => (decimal)mass.Grams));
}
