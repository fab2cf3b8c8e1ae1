using ClassKit.Baking.Costing;
using ClassKit.Baking.Quantities;
using ClassKit.BenchSums.Catalogue;
using ClassKit.BenchSums.Inputs;
using ClassKit.BenchSums.Results;

namespace ClassKit.BenchSums.Sums;

/// <summary>Yields, packs and prices.</summary>
internal static class CostSums
{
    private static readonly SumInput<Mass> Bought = Ask.For("bought", "as purchased", Notations.Mass, "5 kg");
    private static readonly SumInput<Mass> Left = Ask.For("left", "as used", Notations.Mass, "4.1 kg");
    private static readonly SumInput<Mass> Needed = Ask.For("needed", "what is needed", Notations.Mass, "3 kg");
    private static readonly SumInput<Money> PricePerKilogram = Ask.For(
        "price",
        "the price of a kilogram as purchased",
        Notations.Money,
        "2.40"
    );
    private static readonly SumInput<Mass> Pack = Ask.For("pack", "what is in a pack", Notations.Mass, "2.5 kg");
    private static readonly SumInput<Money> PackPrice = Ask.For("price", "the price of a pack", Notations.Money, "7.80");
    private static readonly SumInput<Money> FoodCost = Ask.For("food-cost", "what the food costs", Notations.Money, "1.35");
    private static readonly SumInput<Percent> Share = Ask.For(
        "share",
        "the share of the price that food may take",
        Notations.Percent,
        "30 %"
    );
    private static readonly SumInput<Money> Price = Ask.For("price", "the price", Notations.Money, "4.50");

    public static IReadOnlyList<BenchSum> All { get; } =
    [
        new(
            "yield",
            "What share can be used, what to buy, and what does it cost then?",
            SumTopic.Cost,
            [Bought, Left, Needed, PricePerKilogram],
            values =>
                YieldTest
                    .Of(values.Of(Bought), values.Of(Left))
                    .Then(test =>
                        SumResult.Together(
                            SumResult.Of<YieldTest>(test, used => [new("yield", new SumQuantity.OfPercent(PerHundred.Of(used.Share)))]),
                            SumResult.Of(test.ToBuy(values.Of(Needed)), "to buy", mass => new SumQuantity.OfMass(mass)),
                            SumResult.Of(
                                test.EdiblePortionPrice(values.Of(PricePerKilogram)),
                                "price of a kilogram as used",
                                price => new SumQuantity.OfMoney(price)
                            )
                        )
                    )
        ),
        new("packs", "How many packs, and what do they cost?", SumTopic.Cost, [Needed, Pack, PackPrice], values =>
        {
            PurchaseUnit unit = new("pack", values.Of(Pack), values.Of(PackPrice));
            return SumResult.Together(
                SumResult.Of(unit.PacksFor(values.Of(Needed)), "packs", packs => new SumQuantity.OfCount(packs)),
                SumResult.Of(unit.CostOfPacks(values.Of(Needed)), "cost of whole packs", cost => new SumQuantity.OfMoney(cost)),
                SumResult.Of(unit.CostOf(values.Of(Needed)), "cost of what is used", cost => new SumQuantity.OfMoney(cost))
            );
        }),
        new("price", "What must it sell for?", SumTopic.Cost, [FoodCost, Share], values =>
            SumResult.Of(SellingPrice.For(values.Of(FoodCost), values.Of(Share).Value), "price", price => new SumQuantity.OfMoney(price))
        ),
        new("food-cost", "What share of the price is food?", SumTopic.Cost, [FoodCost, Price], values =>
            SumResult.Of(
                SellingPrice.FoodCostPercent(values.Of(FoodCost), values.Of(Price)),
                "share of the price",
                percent => new SumQuantity.OfPercent(percent)
            )
        ),
    ];
}
