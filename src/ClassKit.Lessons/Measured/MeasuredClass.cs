using ClassKit.Lessons.Packs;

namespace ClassKit.Lessons.Measured;

/// <summary>What a class measured, held against what was predicted, and the breads against each other.</summary>
/// <param name="Teams">Whose measurements these are.</param>
/// <param name="Breads">The breads, in the lesson's order, each with its control behind it where it has one.</param>
/// <param name="Differences">Of every two breads how much higher the first stood in the same teams; those that no team measured both of are
/// left out.</param>
public sealed record MeasuredClass(
    IReadOnlyList<string> Teams,
    IReadOnlyList<MeasuredBread> Breads,
    IReadOnlyList<(MeasuredBread First, MeasuredBread Second, PairedDifference Height)> Differences
)
{
    /// <summary>Each bread of a series against the bread as written, over the teams that made them; none without a series.</summary>
    public IReadOnlyList<SeriesMeasured> Series => SeriesMeasured.Of(Breads);

    /// <summary>Puts what teams measured together.</summary>
    public static MeasuredClass Of(ComputedPack pack, IReadOnlyList<TeamMeasurements> teams)
    {
        ArgumentNullException.ThrowIfNull(pack);
        ArgumentNullException.ThrowIfNull(teams);
        List<MeasuredBread> breads = [.. MeasuredBread.AskedOf(pack).Select(asked => MeasuredBread.Of(asked, pack, teams))];
        var pairs = breads.SelectMany(
            (first, at) =>
                breads.Skip(at + 1).Where(second => AreCompared(first, second)).Select(second => (first, second, Difference(first, second)))
        );
        return new(
            [.. teams.Select(team => team.Team)],
            breads,
            [.. pairs.Where(pair => pair.Item3 is not null).Select(pair => (pair.first, pair.second, pair.Item3!))]
        );
    }

    /// <summary>A control shows what lifts its own bread, and says nothing of others.</summary>
    private static bool AreCompared(MeasuredBread first, MeasuredBread second) =>
        first.ControlOf is null && (second.ControlOf is null || second.ControlOf == first.Compared.Bread.Formula.Id);

    private static PairedDifference? Difference(MeasuredBread first, MeasuredBread second)
    {
        if (first.Height is not { } one || second.Height is not { } other)
            return null;
        return PairedDifference.Of([
            .. one.TeamMeans.Where(team => other.TeamMeans.ContainsKey(team.Key)).Select(team => team.Value - other.TeamMeans[team.Key]),
        ]);
    }
}
