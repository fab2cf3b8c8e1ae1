namespace ClassKit.Grading.Statistics;

/// <summary>What each student of a group earned on each item: the input of item statistics.</summary>
public sealed class ScoreTable
{
    private readonly decimal[][] _scores;

    /// <summary>Makes a table.</summary>
    /// <param name="most">What each item can earn, above 0.</param>
    /// <param name="scores">One row a student, one score an item. Leave out students without a score on some item: statistics need whole
    /// rows.</param>
    /// <exception cref="ArgumentException">A row has another length than <paramref name="most"/>, or an item can earn nothing.</exception>
    public ScoreTable(IReadOnlyList<decimal> most, IReadOnlyList<IReadOnlyList<decimal>> scores)
    {
        ArgumentNullException.ThrowIfNull(most);
        ArgumentNullException.ThrowIfNull(scores);
        if (most.Any(points => points <= 0))
            throw new ArgumentException("Every item can earn more than nothing.", nameof(most));
        if (scores.Any(row => row.Count != most.Count))
            throw new ArgumentException($"Every student has {most.Count} scores.", nameof(scores));
        Most = most;
        _scores = [.. scores.Select(row => row.ToArray())];
        Totals = [.. _scores.Select(row => row.Sum())];
    }

    /// <summary>What each item can earn.</summary>
    public IReadOnlyList<decimal> Most { get; }

    /// <summary>How many students.</summary>
    public int Students => _scores.Length;

    /// <summary>How many items.</summary>
    public int Items => Most.Count;

    /// <summary>Each student's total.</summary>
    public IReadOnlyList<decimal> Totals { get; }

    /// <summary>All students' scores on one item.</summary>
    public IReadOnlyList<decimal> Item(int item) => [.. _scores.Select(row => row[item])];

    /// <summary>Each student's total over all other items.</summary>
    public IReadOnlyList<decimal> Rest(int item) => [.. _scores.Select((row, student) => Totals[student] - row[item])];

    /// <summary>The table without one item.</summary>
    public ScoreTable Without(int item)
    {
        IReadOnlyList<decimal> Left(IReadOnlyList<decimal> row) => [.. row.Where((_, at) => at != item)];
        return new(Left(Most), [.. _scores.Select(Left)]);
    }
}
