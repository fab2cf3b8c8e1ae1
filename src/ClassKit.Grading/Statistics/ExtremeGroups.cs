namespace ClassKit.Grading.Statistics;

/// <summary>The best and the weakest 27 % of a group by total, between which an item should tell.</summary>
/// <remarks>
/// Where the cut falls among equal totals, each of those students counts by the fraction that fills the group: any other rule would let the
/// order of the roster decide.
/// </remarks>
internal sealed class ExtremeGroups
{
    private const double Share = 0.27;

    private readonly double[] _best;
    private readonly double[] _weakest;
    private readonly double _size;

    private ExtremeGroups(IReadOnlyList<decimal> totals)
    {
        _size = Share * totals.Count;
        _weakest = Weights(totals);
        _best = Weights([.. totals.Select(total => -total)]);
    }

    /// <summary>The groups; null where nobody's total differs.</summary>
    public static ExtremeGroups? Of(IReadOnlyList<decimal> totals) => totals.Any(total => total != totals[0]) ? new(totals) : null;

    /// <summary>The best group's mean minus the weakest group's.</summary>
    public double Difference(IReadOnlyList<decimal> scores) =>
        scores.Select((score, student) => (double)score * (_best[student] - _weakest[student])).Sum() / _size;

    /// <summary>Fills the group from the lowest total up.</summary>
    private double[] Weights(IReadOnlyList<decimal> totals)
    {
        var weights = new double[totals.Count];
        var left = _size;
        foreach (var tied in Enumerable.Range(0, totals.Count).GroupBy(student => totals[student]).OrderBy(tied => tied.Key))
        {
            var students = tied.ToList();
            var each = Math.Clamp(left / students.Count, 0, 1);
            students.ForEach(student => weights[student] = each);
            left -= each * students.Count;
        }
        return weights;
    }
}
