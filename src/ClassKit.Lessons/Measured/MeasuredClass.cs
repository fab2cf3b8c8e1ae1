using ClassKit.Lessons.Packs;

namespace ClassKit.Lessons.Measured;

/// <summary>What a class measured, held against what was predicted, and the breads against each other.</summary>
/// <param name="Teams">Whose measurements these are.</param>
/// <param name="Breads">The breads, in the lesson's order.</param>
/// <param name="Differences">Of every two breads how much higher the first stood in the same teams; those that no team measured both of are
/// left out.</param>
public sealed record MeasuredClass(
    IReadOnlyList<string> Teams,
    IReadOnlyList<MeasuredBread> Breads,
    IReadOnlyList<(MeasuredBread First, MeasuredBread Second, PairedDifference Height)> Differences
)
{
    /// <summary>Puts what teams measured together.</summary>
    public static MeasuredClass Of(ComputedPack pack, IReadOnlyList<TeamMeasurements> teams)
    {
        ArgumentNullException.ThrowIfNull(pack);
        ArgumentNullException.ThrowIfNull(teams);
        List<MeasuredBread> breads = [.. pack.Comparison.Select(compared => MeasuredBread.Of(compared, pack, teams))];
        var pairs = breads.SelectMany((first, at) => breads.Skip(at + 1).Select(second => (first, second, Difference(first, second))));
        return new(
            [.. teams.Select(team => team.Team)],
            breads,
            [.. pairs.Where(pair => pair.Item3 is not null).Select(pair => (pair.first, pair.second, pair.Item3!))]
        );
    }

    private static PairedDifference? Difference(MeasuredBread first, MeasuredBread second)
    {
        if (first.Height is not { } one || second.Height is not { } other)
            return null;
        return PairedDifference.Of([
            .. one.TeamMeans.Where(team => other.TeamMeans.ContainsKey(team.Key)).Select(team => team.Value - other.TeamMeans[team.Key]),
        ]);
    }
}
