namespace ClassKit.Terms.Marks;

/// <summary>What one sitting of one student came to.</summary>
public sealed record Mark
{
    private Mark(MarkState state, decimal points = 0, decimal outOf = 0) => (State, Points, OutOf) = (state, points, outOf);

    /// <summary>The student was not there.</summary>
    public static Mark Absent { get; } = new(MarkState.Absent);

    /// <summary>The student need not do it.</summary>
    public static Mark Excused { get; } = new(MarkState.Excused);

    /// <summary>It cannot be there yet.</summary>
    public static Mark NotDue { get; } = new(MarkState.NotDue);

    /// <summary>What is said of the sitting.</summary>
    public MarkState State { get; }

    /// <summary>Earned, 0 to <see cref="OutOf"/>; 0 where nothing was marked.</summary>
    public decimal Points { get; }

    /// <summary>Possible, above 0; 0 where nothing was marked.</summary>
    public decimal OutOf { get; }

    /// <summary>Whether it came late.</summary>
    public Lateness Lateness { get; init; }

    /// <summary>What single criteria earned, for bench work; else empty.</summary>
    public IReadOnlyList<CriterionMark> Criteria { get; init; } = [];

    /// <summary>
    /// How many answers the instructor has not decided on yet, 0 or more: they count neither for nor against, and the points may still
    /// change.
    /// </summary>
    public int Undecided { get; init; }

    /// <summary>What the markers wrote of it; empty for nothing.</summary>
    public string Comment { get; init; } = "";

    /// <summary>Points for marked work.</summary>
    /// <param name="points">From 0 to what is possible.</param>
    /// <param name="outOf">Above 0.</param>
    public static Mark Of(decimal points, decimal outOf)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(outOf);
        ArgumentOutOfRangeException.ThrowIfNegative(points);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(points, outOf);
        return new(MarkState.Marked, points, outOf);
    }
}
