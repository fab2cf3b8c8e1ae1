namespace ClassKit.Baking;

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
        if (dough.Grams <= 0)
            return new Impossibility("no-dough", $"{Figures.Grams(dough)} of dough were given.", "Give a mass above 0 g.");
        if (capacity.Grams <= 0)
            return new Impossibility("no-bowl", $"A bowl for {Figures.Grams(capacity)} of dough was given.", "Give what the bowl takes, above 0 g.");
        var batches = Math.Ceiling(dough / capacity - 1e-9);
        return batches <= Most
            ? new MixerBowl((int)batches, dough / batches)
            : new Impossibility("too-many-batches", $"{Figures.Show(batches, 0)} batches would be needed.", "Look at the units of the dough and the bowl.");
    }
}
