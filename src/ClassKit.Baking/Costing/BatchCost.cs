namespace ClassKit.Baking;

/// <summary>What a batch costs in ingredients.</summary>
/// <param name="Lines">Every line of the batch, in its order.</param>
/// <param name="Pieces">How many good pieces it makes; at least 1.</param>
public sealed record BatchCost(IReadOnlyList<CostLine> Lines, int Pieces)
{
    /// <summary>All ingredients, not rounded.</summary>
    public Money Total => Lines.Aggregate(default(Money), (sum, line) => sum + line.Cost);

    /// <summary>A piece's share, not rounded.</summary>
    public Money PerPiece => Total / Pieces;

    /// <summary>A portion of several pieces, not rounded.</summary>
    public Money PerPortion(int piecesInPortion) => PerPiece * piecesInPortion;

    /// <summary>The cost of a batch.</summary>
    /// <param name="batch">As weighed.</param>
    /// <param name="pieces">How many good pieces it makes.</param>
    /// <param name="prices">How each ingredient is bought, by its id.</param>
    /// <param name="yields">For what is trimmed, by its id; everything else is used whole.</param>
    public static Computed<BatchCost> Of(Batch batch, int pieces, IReadOnlyDictionary<string, PurchaseUnit> prices, IReadOnlyDictionary<string, YieldTest>? yields = null)
    {
        ArgumentNullException.ThrowIfNull(batch);
        ArgumentNullException.ThrowIfNull(prices);
        if (pieces < 1)
            return new Impossibility("no-pieces", $"{pieces} pieces were given.", "A batch that makes no pieces has no cost per piece.");
        if (batch.Lines.FirstOrDefault(line => !prices.ContainsKey(line.Ingredient.Id)) is { } unpriced)
            return new Impossibility("no-price", $"{unpriced.Ingredient.Name} has no price.", "Give how it is sold, even if it costs nothing.");
        return new BatchCost(
            [
                .. batch.Lines.Select(line =>
                {
                    var bought = yields is not null && yields.TryGetValue(line.Ingredient.Id, out var test) ? test.ToBuy(line.Weighed) : line.Weighed;
                    return new CostLine(line.Ingredient, line.Weighed, bought, prices[line.Ingredient.Id].CostOf(bought));
                }),
            ],
            pieces);
    }
}
