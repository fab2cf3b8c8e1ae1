namespace ClassKit.Terms.Difficulty;

/// <summary>
/// How able a class is on a scale of difficulties: abilities spread as a normal distribution, by marginal maximum likelihood with the
/// difficulties as they are.
/// </summary>
/// <param name="Mean">In logits above the mean difficulty.</param>
/// <param name="Deviation">The standard deviation, at least <see cref="Least"/>.</param>
/// <param name="Error">The standard error of the mean.</param>
/// <param name="Works">How many works it rests on.</param>
public sealed record AbilitySpread(double Mean, double Deviation, double Error, int Works)
{
    /// <summary>The smallest deviation that is told: a class whose works differ by no more than chance still is no one person.</summary>
    public const double Least = 0.1;

    private const int Rounds = 2000;
    private const double Still = 1e-7;

    /// <summary>
    /// The spread of those who did some works, by expectation and maximisation; null where all got everything or nothing, which says how
    /// able nobody is.
    /// </summary>
    internal static AbilitySpread? Of(IReadOnlyList<AskedAlike> groups, IReadOnlyList<double> difficulties)
    {
        var works = groups.Sum(group => group.Scores.Sum());
        var got = groups.Sum(group => group.Scores.Index().Sum(score => score.Index * score.Item));
        if (got == 0 || got == groups.Sum(group => group.Scores.Sum() * group.Parts.Length))
            return null;
        var (mean, deviation, left) = (0.0, 1.0, 0.0);
        for (var round = 0; round < Rounds; round++)
        {
            var seen = groups.SelectMany(group => Seen(group, difficulties, mean, deviation)).ToList();
            var next = seen.Sum(one => one.Times * one.Mean) / works;
            var spread = Math.Max(Least, Math.Sqrt(seen.Sum(one => one.Times * (one.Variance + Math.Pow(one.Mean - next, 2))) / works));
            left = seen.Sum(one => one.Times * (Math.Pow(spread, 2) - one.Variance));
            var moved = Math.Max(Math.Abs(next - mean), Math.Abs(spread - deviation));
            (mean, deviation) = (next, spread);
            if (moved < Still)
                break;
        }
        return new(mean, deviation, left > 0 ? Math.Pow(deviation, 2) / Math.Sqrt(left) : double.PositiveInfinity, works);
    }

    /// <summary>What each score of a group says of the ability behind it.</summary>
    private static IEnumerable<(int Times, double Mean, double Variance)> Seen(
        AskedAlike group,
        IReadOnlyList<double> difficulties,
        double mean,
        double deviation
    )
    {
        var abilities = NormalGrid.Points.Select(point => mean + (deviation * point.At)).ToArray();
        var none = abilities.Select(ability => -group.Parts.Sum(part => Math.Log(1 + Math.Exp(ability - difficulties[part])))).ToArray();
        foreach (var (score, times) in group.Scores.Index().Where(score => score.Item > 0))
        {
            var top = abilities.Index().Max(ability => (score * ability.Item) + none[ability.Index]);
            var weights = abilities
                .Select((ability, at) => NormalGrid.Points[at].Weight * Math.Exp((score * ability) + none[at] - top))
                .ToArray();
            var sum = weights.Sum();
            var middle = weights.Zip(abilities, (weight, ability) => weight * ability).Sum() / sum;
            yield return (times, middle, weights.Zip(abilities, (weight, ability) => weight * Math.Pow(ability - middle, 2)).Sum() / sum);
        }
    }
}
