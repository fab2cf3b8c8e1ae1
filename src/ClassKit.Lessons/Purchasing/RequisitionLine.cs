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

    /// <summary>What to buy for it; null where there is no price.</summary>
    public Purchase? Purchase { get; init; }

    internal static IReadOnlyList<RequisitionLine> For(IReadOnlyList<FormulaCard> cards, IReadOnlyList<LessonDemonstration> demonstrations)
    {
        var shown = demonstrations.SelectMany(each => each.Ingredients).ToLookup(line => line.Ingredient.Id);
        IReadOnlyList<RequisitionLine> weighed =
        [
            .. cards
                .SelectMany(card =>
                    card.Batch.Lines.SelectMany(line => Bought(card, line))
                        .Concat(card.Surfaces.Select(taken => (card.Bread, taken.Surface.Ingredient, Mass: Times(taken.Mass, card.Loads))))
                )
                .GroupBy(use => use.Ingredient.Id)
                .Select(group =>
                    Line(
                        group.First().Ingredient,
                        [
                            .. group
                                .GroupBy(use => use.Bread.Formula.Id)
                                .Select(of => new RequisitionUse(of.First().Bread, Sum(of.Select(use => use.Mass)))),
                        ],
                        default
                    )
                ),
        ];
        return
        [
            .. weighed.Select(line => Line(line.Ingredient, line.Uses, Sum(shown[line.Ingredient.Id].Select(each => each.Mass)))),
            .. shown
                .Where(lines => weighed.All(line => line.Ingredient.Id != lines.Key))
                .Select(lines => Line(lines.First().Ingredient, [], Sum(lines.Select(each => each.Mass)))),
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

    /// <summary>What the scale cannot show is bought all the same.</summary>
    private static Mass Larger(BatchLine line) => line.IsBelowScale ? line.Exact : line.Weighed;

    private static RequisitionLine Line(Ingredient ingredient, IReadOnlyList<RequisitionUse> uses, Mass shown)
    {
        var mass = Sum(uses.Select(use => use.Mass).Append(shown));
        return new(ingredient, mass, uses, HouseholdMeasures.ToBuy(ingredient, mass), CardLine.Ounces(mass)) { Shown = shown };
    }

    /// <summary>In decimal, so that six times 6.7 g are 40.2 g.</summary>
    private static Mass Times(Mass mass, int loads) => Mass.FromGrams((double)((decimal)mass.Grams * loads));

    private static Mass Sum(IEnumerable<Mass> masses) => Mass.FromGrams((double)masses.Sum(mass => (decimal)mass.Grams));
}
