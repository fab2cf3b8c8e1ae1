using ClassKit.Terms.Marks;
using ClassKit.Terms.Rules;

namespace ClassKit.Terms.Bench;

/// <summary>One sitting of work at the bench, marked by one or two.</summary>
/// <param name="Scale">What was marked with.</param>
/// <param name="First">What the first marker saw.</param>
/// <param name="Second">What the second marker saw; null if there was none.</param>
public sealed record BenchMarking(BenchScale Scale, BenchSheet First, BenchSheet? Second)
{
    /// <summary>
    /// The mark of every student whom somebody marked; one whom only one marker marked has that one's, the second's too where the first
    /// marker's counts: who was ill that hour takes no mark from anybody. Where two were asked nothing in
    /// common there is no mark.
    /// </summary>
    public IEnumerable<(string Student, Mark Mark)> Marks(MarkerRule rule)
    {
        var all = Second is null ? [First] : new[] { First, Second };
        foreach (var student in all.SelectMany(sheet => sheet.Places.Keys).Distinct())
        {
            BenchSheet[] sheets = rule == MarkerRule.First && First.Places.ContainsKey(student) ? [First] : all;
            List<IReadOnlyList<int>> seen =
            [
                .. sheets.Where(sheet => sheet.Places.ContainsKey(student)).Select(sheet => sheet.Places[student]),
            ];
            var asked = seen.Aggregate(BenchScale.Common);
            if (asked.All(place => place == BenchScale.NotAsked))
                continue;
            yield return (
                student,
                Of(seen) with
                {
                    Comment = string.Join(
                        " ",
                        sheets.Select(sheet => sheet.Comments.GetValueOrDefault(student, "")).Where(comment => comment.Length > 0)
                    ),
                }
            );
        }
    }

    /// <summary>What one marker was asked and the other not, because it was arranged in between, counts for neither.</summary>
    private Mark Of(List<IReadOnlyList<int>> seen)
    {
        List<IReadOnlyList<int>> asked = [.. seen.Select(places => seen.Aggregate(places, BenchScale.Common))];
        return Mark.Of(asked.Sum(Scale.Points) / seen.Count, Scale.OutOfThese(asked[0])) with
        {
            Criteria =
            [
                .. Scale
                    .Criteria.Index()
                    .Where(criterion => asked[0][criterion.Index] != BenchScale.NotAsked)
                    .Select(criterion => new CriterionMark(
                        criterion.Item.Name,
                        asked.Sum(places => Scale.Levels[places[criterion.Index]]) / seen.Count / Scale.Levels[^1]
                    )
                    {
                        Seen = [.. asked.Select(places => Scale.LevelNames[places[criterion.Index]])],
                        OutOf = Scale.Levels[^1] * criterion.Item.Weight,
                    }),
            ],
        };
    }
}
