namespace ClassKit.Baking;

/// <summary>A price from what the food costs.</summary>
public static class SellingPrice
{
    /// <summary>The price of which the food is a given share: cost / target.</summary>
    /// <param name="foodCost">Not negative.</param>
    /// <param name="foodCostPercent">The share of the price that food may take, in percent; above 0, at most 100.</param>
    public static Computed<Money> For(Money foodCost, double foodCostPercent) => foodCostPercent is > 0 and <= 100
        ? foodCost / ((decimal)foodCostPercent / 100)
        : new Impossibility("bad-target", $"A food cost of {Figures.Show(foodCostPercent)} % of the price was asked for.", "Ask for more than 0 % and at most 100 %.");

    /// <summary>The share of a price that the food takes, in percent.</summary>
    public static Computed<double> FoodCostPercent(Money foodCost, Money price) => price.Amount > 0
        ? (double)(foodCost.Amount / price.Amount * 100)
        : new Impossibility("no-price", $"A price of {Figures.Show((double)price.Amount)} was given.", "Give a price above 0.");
}
