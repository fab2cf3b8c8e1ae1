using ClassKit.Terms.Bench;

namespace ClassKit.Terms.Agreement;

/// <summary>How far two markers of the same work agree.</summary>
/// <param name="Work">The title of the work.</param>
/// <param name="Marking">What both saw.</param>
/// <param name="Students">How many were marked by both.</param>
/// <param name="OnlyOne">The ids of students whom only one marked.</param>
/// <param name="Points">The correlations of the points; null where undefined.</param>
/// <param name="MeanDifference">Second marker less first, in points.</param>
/// <param name="Criteria">Criterion by criterion, in the rubric's order.</param>
/// <param name="Apart">Who was seen differently, the furthest apart first.</param>
public sealed record MarkerAgreement(
    string Work,
    BenchMarking Marking,
    int Students,
    IReadOnlyList<string> OnlyOne,
    IntraclassCorrelations? Points,
    decimal MeanDifference,
    IReadOnlyList<CriterionAgreement> Criteria,
    IReadOnlyList<MarkedApart> Apart
)
{
    /// <summary>
    /// With fewer students than these a coefficient says little beyond its interval (Koo and Li, Journal of Chiropractic Medicine 15, 2016,
    /// 155, ask for thirty; from memory).
    /// </summary>
    public const int Few = 30;

    /// <summary>Compares two markers.</summary>
    /// <param name="work">The title of the work.</param>
    /// <param name="marking">What both saw; there is a second marker.</param>
    public static MarkerAgreement Of(string work, BenchMarking marking)
    {
        ArgumentNullException.ThrowIfNull(marking);
        var (scale, ones, others) = (
            marking.Scale,
            marking.First.Places,
            (marking.Second ?? throw new ArgumentException("There is no second marker.", nameof(marking))).Places
        );
        List<string> both = [.. ones.Keys.Where(others.ContainsKey)];
        // What one marker was asked and the other not is no difference between them.
        var first = both.ToDictionary(student => student, student => BenchScale.Common(ones[student], others[student]));
        var second = both.ToDictionary(student => student, student => BenchScale.Common(others[student], ones[student]));
        return new(
            work,
            marking,
            both.Count,
            [.. ones.Keys.Concat(others.Keys).Distinct().Where(student => !ones.ContainsKey(student) || !others.ContainsKey(student))],
            IntraclassCorrelations.Of([
                .. both.Select(student =>
                    (IReadOnlyList<double>)[(double)scale.Points(first[student]), (double)scale.Points(second[student])]
                ),
            ]),
            both.Count == 0 ? 0 : both.Sum(student => scale.Points(second[student]) - scale.Points(first[student])) / both.Count,
            [
                .. scale.Criteria.Select(
                    (criterion, at) =>
                        Of(
                            criterion.Name,
                            [.. both.Select(student => (First: first[student][at], Second: second[student][at])).Where(IsAsked)],
                            scale.Levels.Count
                        )
                ),
            ],
            [
                .. both.Select(student => Compare(student, scale, first[student], second[student]))
                    .Where(pair => pair.Levels > 0)
                    .OrderByDescending(pair => pair.Levels)
                    .ThenByDescending(pair => Math.Abs(pair.First - pair.Second)),
            ]
        );
    }

    private static CriterionAgreement Of(string criterion, IReadOnlyList<(int First, int Second)> pairs, int levels)
    {
        var counts = new double[levels, levels];
        foreach (var (first, second) in pairs)
            counts[first, second]++;
        return new(
            criterion,
            pairs.Count,
            pairs.Count(pair => pair.First == pair.Second),
            pairs.Count(pair => Math.Abs(pair.First - pair.Second) > 1),
            pairs.Select(pair => pair.Second - pair.First).DefaultIfEmpty().Average(),
            WeightedKappa.Of(counts, WeightedKappa.SquaredWeights(levels))
        );
    }

    private static MarkedApart Compare(string student, BenchScale scale, IReadOnlyList<int> first, IReadOnlyList<int> second) =>
        new(
            student,
            scale.Points(first),
            scale.Points(second),
            [
                .. scale
                    .Criteria.Select((criterion, at) => (criterion.Name, first[at], second[at]))
                    .Where(pair => pair.Item2 != pair.Item3 && IsAsked((pair.Item2, pair.Item3)))
                    .OrderByDescending(pair => Math.Abs(pair.Item2 - pair.Item3)),
            ]
        );

    private static bool IsAsked((int First, int Second) pair) => pair.First != BenchScale.NotAsked && pair.Second != BenchScale.NotAsked;
}
