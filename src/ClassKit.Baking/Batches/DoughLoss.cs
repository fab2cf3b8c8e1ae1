using ClassKit.Baking.Explanations;
using ClassKit.Baking.Quantities;

namespace ClassKit.Baking.Batches;

/// <summary>What is lost between the mixing bowl and the counted pieces, in percent of the mixed dough.</summary>
/// <param name="Percents">The single losses in order; each 0 to less than 100.</param>
/// <param name="Rule">How they combine.</param>
/// <remarks>
/// The default is to add, as bakery schools do (common practice, no source):
/// 500 lb of bread at 2 % and 11 % ask for 500/0.87 = 574.71 lb of dough. Compounded it is 500/(0.98 × 0.89) = 573.26 lb.
/// </remarks>
public sealed record DoughLoss(IReadOnlyList<double> Percents, LossRule Rule = LossRule.Added)
{
    /// <summary>Nothing is lost.</summary>
    public static DoughLoss None { get; } = new([]);

    /// <summary>A single loss.</summary>
    public static DoughLoss Of(double percent) => new([percent]);

    /// <summary>Several losses, each a share of the mixed dough.</summary>
    public static DoughLoss Added(params double[] percents) => new(percents, LossRule.Added);

    /// <summary>Several losses, each a share of what the one before left.</summary>
    public static DoughLoss Compounded(params double[] percents) => new(percents, LossRule.Compounded);

    /// <summary>All together, as a percentage of the mixed dough.</summary>
    public double TotalPercent =>
        Rule switch
        {
            LossRule.Added => Percents.Sum(),
            LossRule.Compounded => PerHundred.Of(1 - Percents.Aggregate(1.0, (left, percent) => left * (1 - PerHundred.Share(percent)))),
        };

    /// <summary>The dough to mix so that <paramref name="wanted"/> is left.</summary>
    public Computed<Mass> DoughFor(Mass wanted)
    {
        foreach (var percent in Percents)
            if (!double.IsFinite(percent) || percent < 0 || percent >= 100)
                return new Impossibility(
                    "loss-out-of-range",
                    $"A loss of {Figures.Exact(percent)} % was found; a loss is 0 % or more and less than 100 %.",
                    "Give the share of the mixed dough that does not become pieces."
                );
        if (TotalPercent >= 100)
            return new Impossibility(
                "loss-out-of-range",
                $"The losses add up to {Figures.Exact(TotalPercent)} % of the dough, so nothing would be left.",
                "Together they must be less than 100 %."
            );
        if (Sanity.Mass(wanted, "dough in the pieces", "nothing-wanted") is { } nothing)
            return nothing;
        var dough = wanted / (1 - PerHundred.Share(TotalPercent));
        if (Sanity.Mass(dough, "dough to mix", "nothing-wanted") is { } tooMuch)
            return tooMuch;
        var left = Rule switch
        {
            LossRule.Added => $"(1 - {string.Join(" - ", Percents.DefaultIfEmpty(0).Select(percent => $"{Figures.Exact(percent)} %"))})",
            LossRule.Compounded =>
                $"({string.Join(" × ", Percents.DefaultIfEmpty(0).Select(percent => $"(1 - {Figures.Exact(percent)} %)"))})",
        };
        return Explanation
            .Of(
                "Dough to mix",
                "dough to mix",
                Rule == LossRule.Added ? "dough in the pieces / (1 - losses)" : "dough in the pieces / what each loss leaves",
                $"{Figures.Grams(wanted)} / {left}",
                Figures.Grams(dough),
                Rule == LossRule.Added
                    ? "Losses are shares of the mixed dough and are added."
                    : "Each loss is a share of what the one before left."
            )
            .For(dough);
    }
}
