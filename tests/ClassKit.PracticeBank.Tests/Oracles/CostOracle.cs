using ClassKit.Baking.Batches;
using ClassKit.Baking.Costing;
using ClassKit.Baking.Quantities;
using ClassKit.Baking.Weighing;

namespace ClassKit.PracticeBank.Tests.Oracles;

internal static class CostOracle
{
    public static readonly Dictionary<string, Oracle> Exercises = new()
    {
        ["flour_in_a_loaf"] = given =>
        {
            var sack = new PurchaseUnit("sack", Mass.FromKilograms(given["sack"]), given.Money("sack_price"));
            var batch = Scaling.FromFlour(Doughs.Of(("bread_flour", 100)), given.Grams("flour"), Scales.Common).Value;
            var cost = BatchCost.Of(batch, (int)given["loaves"], new Dictionary<string, PurchaseUnit> { ["bread_flour"] = sack }).Value;
            return
            [
                new("kilo", Dollars(sack.PricePerKilogram.Value)),
                new("batch", Dollars(cost.Total)),
                new("loaf", Dollars(cost.PerPiece)),
                new("share", SellingPrice.FoodCostPercent(cost.PerPiece, given.Money("all_cost")).Value / 100),
            ];
        },
        ["peeled_apples"] = given =>
        {
            var test = YieldTest.Of(Mass.FromKilograms(given["bought"]), Mass.FromKilograms(given["used"])).Value;
            return
            [
                new("yield", test.Share),
                new("peeled_price", Dollars(test.EdiblePortionPrice(given.Money("price")).Value)),
                new("buy", test.ToBuy(Mass.FromKilograms(given["need"])).Value.Kilograms),
            ];
        },
        ["price_of_a_bun"] = given =>
        {
            var bun = given.Money("batch_cost") / (decimal)given["buns"];
            return
            [
                new("bun", Dollars(bun)),
                new("price", Dollars(SellingPrice.For(bun, given.Percent("target")).Value)),
                new("menu_share", SellingPrice.FoodCostPercent(bun, given.Money("menu")).Value / 100),
            ];
        },
        ["order_for_saturday"] = given =>
        {
            var pack = new PurchaseUnit("pack", Mass.FromKilograms(given["pack"]), given.Money("pack_price"));
            var unwrap = DoughLoss.Of(given.Percent("trim")).DoughFor(Mass.FromKilograms(given["need"])).Value;
            return
            [
                new("unwrap", unwrap.Kilograms),
                new("packs", pack.PacksFor(unwrap).Value),
                new("cost", Dollars(pack.CostOfPacks(unwrap).Value)),
                new("left", (pack.Mass * pack.PacksFor(unwrap).Value - unwrap).Kilograms),
            ];
        },
        ["market_stall"] = given =>
        {
            // What is sold is the yield of what is baked.
            var sold = YieldTest.Of(Mass.FromGrams(100), Mass.FromGrams(100 - given.Percent("unsold"))).Value;
            var roll = sold.EdiblePortionPrice(given.Money("batch_cost") / (decimal)given["rolls"]).Value;
            return [new("price", Dollars(SellingPrice.For(roll, given.Percent("target")).Value))];
        },
    };

    private static double Dollars(Money money) => (double)money.Amount;
}
