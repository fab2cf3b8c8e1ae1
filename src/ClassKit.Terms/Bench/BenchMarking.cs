using ClassKit.Terms.Marks;
using ClassKit.Terms.Rules;

namespace ClassKit.Terms.Bench;

/// <summary>One sitting of work at the bench, marked by one or two.</summary>
/// <param name="Scale">What was marked with.</param>
/// <param name="First">What the first marker saw.</param>
/// <param name="Second">What the second marker saw; null if there was none.</param>
public sealed record BenchMarking(BenchScale Scale, BenchSheet First, BenchSheet? Second)
{
    /// <summary>The mark of every student whom somebody marked; one whom only one marker marked has that one's.</summary>
    public IEnumerable<(string Student, Mark Mark)> Marks(MarkerRule rule)
    {
        var sheets = Second is null || rule == MarkerRule.First ? [First] : new[] { First, Second };
        foreach (var student in sheets.SelectMany(sheet => sheet.Places.Keys).Distinct())
            yield return (student, Of([.. sheets.Where(sheet => sheet.Places.ContainsKey(student)).Select(sheet => sheet.Places[student])]) with
            {
                Comment = string.Join(" ", sheets.Select(sheet => sheet.Comments.GetValueOrDefault(student, "")).Where(comment => comment.Length > 0)),
            });
    }

    private Mark Of(IReadOnlyList<IReadOnlyList<int>> seen) => Mark.Of(seen.Sum(Scale.Points) / seen.Count, Scale.OutOf) with
    {
        Criteria = [.. Scale.Criteria.Select((criterion, at) => new CriterionMark(criterion.Name, seen.Sum(places => Scale.Levels[places[at]]) / seen.Count / Scale.Levels[^1]))],
    };
}
