using ClassKit.Baking.Explanations;
using ClassKit.Baking.Quantities;

namespace ClassKit.Baking.Costing;

/// <summary>How an ingredient is sold.</summary>
/// <param name="Name">One pack: <c>bag of 25 kg</c>.</param>
/// <param name="Mass">What is in it; above 0.</param>
/// <param name="Price">Of one pack; not negative.</param>
public sealed record PurchaseUnit(string Name, Mass Mass, Money Price)
{
    /// <summary>A pack lighter than this is a slip of the unit: saffron is sold by the gram.</summary>
    private static readonly Mass LightestPack = Quantities.Mass.FromGrams(0.01);

    private const double MostPacks = 1_000_000;

    /// <summary>What 1 kg costs.</summary>
    public Computed<Money> PricePerKilogram => CostOf(Quantities.Mass.FromKilograms(1));

    /// <summary>The fewest whole packs that hold a mass of 0 g or more.</summary>
    public Computed<int> PacksFor(Mass needed)
    {
        if (WhatIsWrong(needed) is { } wrong)
            return wrong;
        var packs = Math.Ceiling(needed / Mass - 1e-9);
        return packs <= MostPacks
            ? new Explanation(
                $"Packs: {Name}",
                [
                    new("packs' worth", "needed / pack", $"{Figures.Grams(needed)} / {Figures.Grams(Mass)}", Figures.Show(needed / Mass)),
                    ExplainedStep.Given("packs", "the next whole number up", Figures.Exact(packs, 0)),
                ],
                ""
            ).For((int)packs)
            : new Impossibility(
                "too-many-packs",
                $"{Figures.Exact(packs, 0)} packs of {Figures.Grams(Mass)} would be needed.",
                "Look at the units of the pack and of what is needed."
            );
    }

    /// <summary>What those packs cost.</summary>
    public Computed<Money> CostOfPacks(Mass needed) =>
        PacksFor(needed)
            .Then(packs =>
                Sanity.Money(Price * packs, "Cost") is { } tooMuch
                    ? tooMuch
                    : Explanation
                        .Of(
                            $"Cost of whole packs: {Name}",
                            "cost",
                            "packs × price of a pack",
                            $"{packs} × {Figures.Amount(Price)}",
                            Figures.Amount(Price * packs)
                        )
                        .For(Price * packs)
            );

    /// <summary>What the mass itself costs, without what is left in the last pack.</summary>
    public Computed<Money> CostOf(Mass used)
    {
        if (WhatIsWrong(used) is { } wrong)
            return wrong;
        var cost = Price * (decimal)used.Grams / (decimal)Mass.Grams;
        if (Sanity.Money(cost, "Cost") is { } tooMuch)
            return tooMuch;
        return Explanation
            .Of(
                $"Cost: {Name}",
                "cost",
                "price of a pack × used / pack",
                $"{Figures.Amount(Price)} × {Figures.Grams(used)} / {Figures.Grams(Mass)}",
                Figures.Amount(cost)
            )
            .For(cost);
    }

    private Impossibility? WhatIsWrong(Mass needed) =>
        Sanity.Mass(Mass, "the pack", "empty-pack")
        ?? (
            Mass < LightestPack
                ? new Impossibility(
                    "empty-pack",
                    $"A pack of {Figures.Grams(Mass)} was given.",
                    $"Give the mass in one pack, {Figures.Grams(LightestPack)} or more."
                )
                : null
        )
        ?? Sanity.Money(Price, "Price of a pack")
        ?? Sanity.Mass(needed, "what is needed", "negative-need", orNone: true);
}
