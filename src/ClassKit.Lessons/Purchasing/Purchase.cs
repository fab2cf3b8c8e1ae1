using ClassKit.Baking.Costing;
using ClassKit.Baking.Explanations;
using ClassKit.Baking.Quantities;

namespace ClassKit.Lessons.Purchasing;

/// <summary>What is bought so that a mass of one ingredient is there.</summary>
/// <param name="Pack">How it is sold.</param>
/// <param name="Packs">Whole packs; the fewest that are enough.</param>
/// <param name="ToPay">For those packs.</param>
/// <param name="Used">The share of that which is baked; the rest stays in the store.</param>
public sealed record Purchase(PurchaseUnit Pack, int Packs, Money ToPay, Money Used)
{
    /// <summary>The purchase of a mass.</summary>
    internal static Computed<Purchase> Of(PurchaseUnit pack, Mass needed) =>
        pack.PacksFor(needed)
            .Then(packs =>
                pack.CostOfPacks(needed).Then(toPay => pack.CostOf(needed).Then<Purchase>(used => new Purchase(pack, packs, toPay, used)))
            );
}
