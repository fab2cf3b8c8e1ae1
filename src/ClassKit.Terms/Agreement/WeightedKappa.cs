using MathNet.Numerics.Distributions;

namespace ClassKit.Terms.Agreement;

/// <summary>
/// Agreement of two markers on levels beyond what chance gives (Cohen, Psychological Bulletin 70, 1968, 213): a near miss counts for part.
/// </summary>
public static class WeightedKappa
{
    /// <summary>Weights by the square of the distance: a level apart of four counts 8/9.</summary>
    /// <param name="levels">How many levels there are; at least 2.</param>
    public static double[,] SquaredWeights(int levels)
    {
        var weights = new double[levels, levels];
        foreach (var (first, second) in Cells(levels))
            weights[first, second] = 1 - Math.Pow((double)(first - second) / (levels - 1), 2);
        return weights;
    }

    /// <summary>Computes it.</summary>
    /// <param name="counts">How often the first marker saw the level of the row and the second that of the column.</param>
    /// <param name="weights">How much a pair of levels agrees: 1 on the diagonal, 0 to 1 elsewhere.</param>
    /// <returns>Null where nothing was marked or both saw one and the same level throughout: then it is undefined, not 0. The interval
    /// rests on the standard error of Fleiss, Cohen and Everitt (Psychological Bulletin 72, 1969, 323), which is one for many students; it
    /// is cut at -1 and 1.</returns>
    public static Coefficient? Of(double[,] counts, double[,] weights)
    {
        ArgumentNullException.ThrowIfNull(counts);
        ArgumentNullException.ThrowIfNull(weights);
        var levels = counts.GetLength(0);
        var all = Cells(levels).Sum(cell => counts[cell.First, cell.Second]);
        if (all == 0)
            return null;
        double Share(int first, int second) => counts[first, second] / all;
        double[] rows = [.. Enumerable.Range(0, levels).Select(first => Enumerable.Range(0, levels).Sum(second => Share(first, second)))];
        double[] columns =
        [
            .. Enumerable.Range(0, levels).Select(second => Enumerable.Range(0, levels).Sum(first => Share(first, second))),
        ];
        var seen = Cells(levels).Sum(cell => weights[cell.First, cell.Second] * Share(cell.First, cell.Second));
        var chance = Cells(levels).Sum(cell => weights[cell.First, cell.Second] * rows[cell.First] * columns[cell.Second]);
        if (1 - chance < 1e-12)
            return null;

        var kappa = (seen - chance) / (1 - chance);
        double[] ofRow =
        [
            .. Enumerable
                .Range(0, levels)
                .Select(first => Enumerable.Range(0, levels).Sum(second => columns[second] * weights[first, second])),
        ];
        double[] ofColumn =
        [
            .. Enumerable.Range(0, levels).Select(second => Enumerable.Range(0, levels).Sum(first => rows[first] * weights[first, second])),
        ];
        var spread = Cells(levels)
            .Sum(cell =>
                Share(cell.First, cell.Second)
                * Math.Pow(
                    (weights[cell.First, cell.Second] * (1 - chance)) - ((ofRow[cell.First] + ofColumn[cell.Second]) * (1 - seen)),
                    2
                )
            );
        var variance = (spread - Math.Pow((seen * chance) - (2 * chance) + seen, 2)) / (all * Math.Pow(1 - chance, 4));
        var half = Normal.InvCDF(0, 1, 1 - Interval.Tail) * Math.Sqrt(Math.Max(0, variance));
        return new(kappa, variance < 1e-15 ? null : new Interval(Math.Max(-1, kappa - half), Math.Min(1, kappa + half)));
    }

    private static IEnumerable<(int First, int Second)> Cells(int levels) =>
        Enumerable.Range(0, levels).SelectMany(first => Enumerable.Range(0, levels).Select(second => (first, second)));
}
