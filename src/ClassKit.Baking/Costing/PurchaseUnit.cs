namespace ClassKit.Baking;

/// <summary>How an ingredient is sold.</summary>
/// <param name="Name">One pack: <c>bag of 25 kg</c>.</param>
/// <param name="Mass">What is in it; above 0.</param>
/// <param name="Price">Of one pack; not negative.</param>
public sealed record PurchaseUnit(string Name, Mass Mass, Money Price)
{
    /// <summary>What 1 kg costs.</summary>
    public Money PricePerKilogram => Price / (decimal)Mass.Kilograms;

    /// <summary>The fewest whole packs that hold a mass.</summary>
    public int PacksFor(Mass needed) => (int)Math.Ceiling(Math.Max(0, needed / Mass) - 1e-9);

    /// <summary>What those packs cost.</summary>
    public Money CostOfPacks(Mass needed) => Price * PacksFor(needed);

    /// <summary>What the mass itself costs, without what is left in the last pack.</summary>
    public Money CostOf(Mass used) => PricePerKilogram * (decimal)used.Kilograms;
}
