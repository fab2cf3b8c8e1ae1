using ClassKit.Baking.Ingredients;
using ClassKit.Baking.Quantities;

namespace ClassKit.Lessons.Purchasing;

/// <summary>What the whole class's ingredients cost.</summary>
/// <param name="ToPay">For whole packs.</param>
/// <param name="Used">The share of that which is baked.</param>
/// <param name="Unpriced">Ingredients that the price list lacks and the sums leave out.</param>
public sealed record PurchaseTotal(Money ToPay, Money Used, IReadOnlyList<Ingredient> Unpriced)
{
    internal static PurchaseTotal Of(IReadOnlyList<RequisitionLine> lines) =>
        new(
            Sum(lines, purchase => purchase.ToPay),
            Sum(lines, purchase => purchase.Used),
            [.. lines.Where(line => line.Purchase is null).Select(line => line.Ingredient)]
        );

    private static Money Sum(IEnumerable<RequisitionLine> lines, Func<Purchase, Money> amount) =>
        lines.Select(line => line.Purchase).OfType<Purchase>().Aggregate(default(Money), (sum, purchase) => sum + amount(purchase));
}
