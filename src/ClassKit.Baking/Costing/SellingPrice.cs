using ClassKit.Baking.Explanations;
using ClassKit.Baking.Quantities;

namespace ClassKit.Baking.Costing;

/// <summary>A price from what the food costs.</summary>
public static class SellingPrice
{
    private const double LeastPercent = 0.1;

    /// <summary>The price of which the food is a given share: cost / target.</summary>
    /// <param name="foodCost">Not negative.</param>
    /// <param name="foodCostPercent">The share of the price that food may take, in percent; 0.1 to 100.</param>
    public static Computed<Money> For(Money foodCost, double foodCostPercent)
    {
        if (!(foodCostPercent is >= LeastPercent and <= 100))
            return new Impossibility(
                "bad-target",
                $"A food cost of {Figures.Exact(foodCostPercent)} % of the price was asked for.",
                $"Ask for {Figures.Exact(LeastPercent)} % or more and at most 100 %."
            );
        if (Sanity.Money(foodCost, "Food cost") is { } odd)
            return odd;
        var price = foodCost / (decimal)PerHundred.Share(foodCostPercent);
        return Explanation
            .Of(
                "Selling price",
                "price",
                "food cost / food-cost share",
                $"{Figures.Amount(foodCost)} / {Figures.Exact(foodCostPercent)} %",
                Figures.Amount(price)
            )
            .For(price);
    }

    /// <summary>The share of a price that the food takes, in percent.</summary>
    /// <param name="foodCost">Not negative.</param>
    /// <param name="price">Above 0.</param>
    public static Computed<double> FoodCostPercent(Money foodCost, Money price)
    {
        if (price.Amount < 0.0001m)
            return new Impossibility("no-price", $"A price of {Figures.Amount(price)} was given.", "Give a price above 0.");
        if ((Sanity.Money(foodCost, "Food cost") ?? Sanity.Money(price, "Price")) is { } odd)
            return odd;
        var percent = PerHundred.Of((double)(foodCost.Amount / price.Amount));
        return Explanation
            .Of(
                "Food cost",
                "share of the price",
                "food cost / price",
                $"{Figures.Amount(foodCost)} / {Figures.Amount(price)}",
                Figures.PerHundredOf(percent)
            )
            .For(percent);
    }
}
