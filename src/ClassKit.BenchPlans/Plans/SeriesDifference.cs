namespace ClassKit.BenchPlans.Plans;

/// <summary>Something that a plan does otherwise with members of a series, though the series does not ask for it.</summary>
/// <param name="AsWritten">The bread whose series it is, counted from 0.</param>
public abstract record SeriesDifference(int AsWritten)
{
    /// <summary>
    /// A further oven counts as so many minutes: two ovens of one setting brown and lift alike less than one does at two times. Our choice:
    /// no source weighs it.
    /// </summary>
    public const int OvenMinutes = 15;

    /// <summary>How much it counts, in minutes; above 0.</summary>
    public abstract int Minutes { get; }

    /// <summary>A step takes longer in one member than in another.</summary>
    /// <param name="AsWritten">The bread whose series it is, counted from 0.</param>
    /// <param name="Step">What the step is called.</param>
    /// <param name="Times">How long it takes in each member that has it.</param>
    public sealed record Lengths(int AsWritten, string Step, IReadOnlyList<SeriesMinutes> Times) : SeriesDifference(AsWritten)
    {
        /// <inheritdoc/>
        public override int Minutes => SeriesMinutes.Spread(Times);
    }

    /// <summary>The dough of one member waits longer than that of another.</summary>
    /// <param name="AsWritten">The bread whose series it is, counted from 0.</param>
    /// <param name="After">The step that it waits after.</param>
    /// <param name="Before">The step that it waits for.</param>
    /// <param name="Times">How long each member waits.</param>
    public sealed record Waits(int AsWritten, string After, string Before, IReadOnlyList<SeriesMinutes> Times) : SeriesDifference(AsWritten)
    {
        /// <inheritdoc/>
        public override int Minutes => SeriesMinutes.Spread(Times);
    }

    /// <summary>
    /// Members are not begun together with what all should begin together, so that they do not stand as long before the tasting.
    /// </summary>
    /// <param name="AsWritten">The bread whose series it is, counted from 0.</param>
    /// <param name="Step">What the step is called: the bake, or the last where one is not baked.</param>
    /// <param name="Times">The minute of the class at which each member begins it.</param>
    public sealed record Beginnings(int AsWritten, string Step, IReadOnlyList<SeriesMinutes> Times) : SeriesDifference(AsWritten)
    {
        /// <inheritdoc/>
        public override int Minutes => SeriesMinutes.Spread(Times);
    }

    /// <summary>Members do not all bake in one oven.</summary>
    /// <param name="AsWritten">The bread whose series it is, counted from 0.</param>
    /// <param name="Members">The ovens of each member, counted from 1.</param>
    public sealed record Ovens(int AsWritten, IReadOnlyList<SeriesOvens> Members) : SeriesDifference(AsWritten)
    {
        /// <inheritdoc/>
        public override int Minutes => OvenMinutes * (Members.SelectMany(member => member.Ovens).Distinct().Count() - 1);
    }
}
