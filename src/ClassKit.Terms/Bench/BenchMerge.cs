using ClassKit.Exercises.Cohorts;

namespace ClassKit.Terms.Bench;

/// <summary>
/// What was brought back from the bench put together with what stands there already, student by student: what one of them leaves empty the
/// other one fills, so that nothing is lost by a sheet on which a single team was marked.
/// </summary>
/// <param name="Sheet">Both together.</param>
/// <param name="Differing">Levels that stand there and that were brought back otherwise.</param>
/// <param name="Away">Students with levels on what was brought back, of whom a word stands in place of a mark: nothing is taken for
/// them.</param>
public sealed record BenchMerge(BenchSheet Sheet, IReadOnlyList<DifferingLevel> Differing, IReadOnlyList<Student> Away)
{
    /// <summary>Puts two sheets together.</summary>
    /// <param name="form">The form of both.</param>
    /// <param name="before">What stands there.</param>
    /// <param name="brought">What was brought back.</param>
    /// <param name="away">The ids of those of whom a word stands in place of a mark.</param>
    /// <param name="replaces">Whether what was brought back counts where both have a level; else what stands there stays.</param>
    public static BenchMerge Of(BenchForm form, BenchSheet before, BenchSheet brought, IReadOnlySet<string> away, bool replaces)
    {
        ArgumentNullException.ThrowIfNull(form);
        ArgumentNullException.ThrowIfNull(before);
        ArgumentNullException.ThrowIfNull(brought);
        ArgumentNullException.ThrowIfNull(away);
        var places = new Dictionary<string, IReadOnlyList<int>>(StringComparer.Ordinal);
        var begun = new Dictionary<string, IReadOnlyList<int?>>(StringComparer.Ordinal);
        var comments = new Dictionary<string, string>(StringComparer.Ordinal);
        List<DifferingLevel> differing = [];
        List<Student> left = [];
        foreach (var student in form.Students)
        {
            var isAway = away.Contains(student.Id);
            List<int?> levels = [];
            foreach (var at in Enumerable.Range(0, form.Scale.Criteria.Count))
            {
                var (was, becomes) = (before.LevelOf(student.Id, at), brought.LevelOf(student.Id, at));
                if (isAway && becomes is not null && !left.Contains(student))
                    left.Add(student);
                if (!isAway && was is { } one && becomes is { } other && one != other)
                    differing.Add(new(student, at, one, other));
                levels.Add(
                    form.IsLeftOut(student.Id, at) ? BenchScale.NotAsked
                    : isAway ? was
                    : replaces ? becomes ?? was
                    : was ?? becomes
                );
            }
            if (!levels.TrueForAll(level => level is null or BenchScale.NotAsked))
            {
                if (levels.TrueForAll(level => level is not null))
                    places[student.Id] = [.. levels.OfType<int>()];
                else
                    begun[student.Id] = levels;
            }
            if (
                Both(before.Comments.GetValueOrDefault(student.Id, ""), brought.Comments.GetValueOrDefault(student.Id, "")) is
                { Length: > 0 } said
            )
                comments[student.Id] = said;
        }
        return new(new(brought.Marker, places) { Begun = begun, Comments = comments }, differing, left);
    }

    /// <summary>Words are kept beside each other, never in place of each other.</summary>
    private static string Both(string was, string brought) =>
        was.Contains(brought, StringComparison.Ordinal) ? was
        : brought.Contains(was, StringComparison.Ordinal) ? brought
        : $"{was} {brought}";
}
