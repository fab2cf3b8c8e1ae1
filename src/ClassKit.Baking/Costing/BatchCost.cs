using ClassKit.Baking.Explanations;
using ClassKit.Baking.Formulas;
using ClassKit.Baking.Quantities;

namespace ClassKit.Baking.Costing;

/// <summary>What a batch costs in ingredients.</summary>
/// <param name="Lines">Every line of the batch, in its order.</param>
/// <param name="Pieces">How many good pieces it makes; at least 1.</param>
public sealed record BatchCost(IReadOnlyList<CostLine> Lines, int Pieces) : IExplained
{
    /// <summary>All ingredients, not rounded.</summary>
    public Money Total => Lines.Aggregate(default(Money), (sum, line) => sum + line.Cost);

    /// <summary>A piece's share, not rounded.</summary>
    public Money PerPiece => Total / Pieces;

    /// <summary>A portion of several pieces, not rounded.</summary>
    public Money PerPortion(int piecesInPortion) => PerPiece * piecesInPortion;

    /// <summary>The lines, their sum, and what falls on one piece.</summary>
    public Explanation Explanation =>
        new(
            "Cost of the batch",
            [
                .. Lines.Select(line =>
                    ExplainedStep.Given(line.Ingredient.Name, $"{Figures.Grams(line.Bought)} at its price", Figures.Amount(line.Cost))
                ),
                new(
                    "all ingredients",
                    "the sum of the lines",
                    string.Join(" + ", Lines.Select(line => Figures.Amount(line.Cost))),
                    Figures.Amount(Total)
                ),
                new("cost per piece", "all ingredients / pieces", $"{Figures.Amount(Total)} / {Pieces}", Figures.Amount(PerPiece)),
            ],
            "Ingredients only: no labour, energy or packing."
        );

    /// <summary>The cost of a batch.</summary>
    /// <param name="batch">As weighed.</param>
    /// <param name="pieces">How many good pieces it makes.</param>
    /// <param name="prices">How each ingredient is bought, by its id.</param>
    /// <param name="yields">For what is trimmed, by its id; everything else is used whole.</param>
    public static Computed<BatchCost> Of(
        Batch batch,
        int pieces,
        IReadOnlyDictionary<string, PurchaseUnit> prices,
        IReadOnlyDictionary<string, YieldTest>? yields = null
    )
    {
        ArgumentNullException.ThrowIfNull(batch);
        ArgumentNullException.ThrowIfNull(prices);
        if (pieces < 1)
            return new Impossibility("no-pieces", $"{pieces} pieces were given.", "A batch that makes no pieces has no cost per piece.");
        if (batch.Lines.FirstOrDefault(line => !prices.ContainsKey(line.Ingredient.Id)) is { } unpriced)
            return new Impossibility(
                "no-price",
                $"{unpriced.Ingredient.Name} has no price.",
                "Give how it is sold, even if it costs nothing."
            );
        List<CostLine> lines = [];
        foreach (var line in batch.Lines)
        {
            Computed<Mass> bought = line.Weighed;
            if (yields is not null && yields.TryGetValue(line.Ingredient.Id, out var test))
                bought = test.ToBuy(line.Weighed);
            if (!bought.TryGet(out var mass, out var why) || !prices[line.Ingredient.Id].CostOf(mass).TryGet(out var cost, out why))
                return why with { Message = $"{line.Ingredient.Name}: {why.Message}" };
            lines.Add(new(line.Ingredient, line.Weighed, mass, cost));
        }
        return new BatchCost(lines, pieces);
    }
}
