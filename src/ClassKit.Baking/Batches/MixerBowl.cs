using ClassKit.Baking.Explanations;
using ClassKit.Baking.Quantities;

namespace ClassKit.Baking.Batches;

/// <summary>How a dough too large for one bowl is divided.</summary>
/// <param name="Batches">How many equal batches; at least 1.</param>
/// <param name="Each">The dough in one of them.</param>
public sealed record MixerBowl(int Batches, Mass Each)
{
    private const int Most = 10_000;

    /// <summary>The fewest equal batches of which each fits the bowl.</summary>
    /// <param name="dough">All of it; above 0.</param>
    /// <param name="capacity">The most that the bowl and its motor take of this dough; above 0.</param>
    public static Computed<MixerBowl> Divide(Mass dough, Mass capacity)
    {
        if (Sanity.Mass(dough, "dough", "no-dough") is { } noDough)
            return noDough;
        if (Sanity.Mass(capacity, "dough that the bowl takes", "no-bowl") is { } noBowl)
            return noBowl;
        var batches = Math.Max(1, Math.Ceiling(dough / capacity - 1e-9));
        return batches <= Most
            ? new Explanation(
                "Batches for the bowl",
                [
                    new(
                        "bowls full",
                        "dough / bowl",
                        $"{Figures.Grams(dough)} / {Figures.Grams(capacity)}",
                        Figures.Show(dough / capacity)
                    ),
                    ExplainedStep.Given("batches", "the next whole number up", Figures.Exact(batches, 0)),
                    new(
                        "dough in one batch",
                        "dough / batches",
                        $"{Figures.Grams(dough)} / {Figures.Exact(batches, 0)}",
                        Figures.Grams(dough / batches)
                    ),
                ],
                "The fewest equal batches."
            ).For(new MixerBowl((int)batches, dough / batches))
            : new Impossibility(
                "too-many-batches",
                $"{Figures.Exact(batches, 0)} batches would be needed.",
                "Look at the units of the dough and the bowl."
            );
    }
}
