using System.Globalization;
using ClassKit.Exercises.Cohorts;

namespace ClassKit.Terms.Bench;

/// <summary>A form as a marker filled it in: what it says of each student, and what it leaves open.</summary>
/// <param name="Sheet">The students of whom there is a level for every criterion.</param>
/// <param name="Gaps">What keeps others from being on it.</param>
public sealed record BenchFilling(BenchSheet Sheet, IReadOnlyList<BenchGap> Gaps)
{
    /// <summary>Reads what stands in the fields of a form; unknown fields are passed over.</summary>
    /// <param name="form">The form.</param>
    /// <param name="fields">What was filled in, by the names that the form gives.</param>
    /// <param name="source">What the marker is called who gave no name.</param>
    public static BenchFilling Of(BenchForm form, IReadOnlyDictionary<string, string> fields, string source)
    {
        ArgumentNullException.ThrowIfNull(form);
        ArgumentNullException.ThrowIfNull(fields);
        var places = new Dictionary<string, IReadOnlyList<int>>(StringComparer.Ordinal);
        var begun = new Dictionary<string, IReadOnlyList<int?>>(StringComparer.Ordinal);
        var comments = new Dictionary<string, string>(StringComparer.Ordinal);
        List<BenchGap> gaps = [];
        foreach (var (index, student) in form.Students.Index())
        {
            var team = Team(form, fields, index, student, gaps);
            List<int?> levels =
            [
                .. form.Scale.Criteria.Select(
                    (_, at) =>
                        form.IsLeftOut(student.Id, at)
                            ? BenchScale.NotAsked
                            : Level(
                                form,
                                fields,
                                Text(fields, BenchForm.OfStudent(student, at)).Length > 0 || team is null
                                    ? BenchForm.OfStudent(student, at)
                                    : BenchForm.OfTeam(team.Value, at),
                                gaps
                            )
                ),
            ];
            var said = new[] { team is { } one ? BenchForm.CommentOfTeam(one) : "", BenchForm.CommentOfStudent(student) }
                .Select(name => Text(fields, name))
                .Where(text => text.Length > 0);
            if (string.Join(" ", said) is { Length: > 0 } comment)
                comments[student.Id] = comment;
            if (levels.TrueForAll(level => level is null or BenchScale.NotAsked))
                continue;
            if (levels.TrueForAll(level => level is not null))
            {
                places[student.Id] = [.. levels.OfType<int>()];
                continue;
            }
            begun[student.Id] = levels;
            gaps.Add(
                new BenchGap.NoLevel(
                    student,
                    [.. form.Scale.Criteria.Where((_, at) => levels[at] is null).Select(criterion => criterion.Name)]
                )
            );
        }
        return new(
            new(Text(fields, BenchForm.Marker) is { Length: > 0 } marker ? marker : source, places) { Begun = begun, Comments = comments },
            [.. gaps.Distinct()]
        );
    }

    private static int? Team(BenchForm form, IReadOnlyDictionary<string, string> fields, int index, Student student, List<BenchGap> gaps)
    {
        var text = Text(fields, BenchForm.TeamOfStudent(student));
        if (text.Length == 0)
            return form.TeamOf(index);
        if (text.Equals(BenchForm.Away, StringComparison.OrdinalIgnoreCase))
            return null;
        if (form.TeamCalled(text) is { } team)
            return team;
        gaps.Add(new BenchGap.NoTeam(student, text, form.Teams));
        return null;
    }

    private static int? Level(BenchForm form, IReadOnlyDictionary<string, string> fields, string name, List<BenchGap> gaps)
    {
        var text = Text(fields, name);
        if (text.Length == 0)
            return null;
        for (var place = 0; place < form.Scale.Levels.Count; place++)
        {
            var isNumber =
                decimal.TryParse(text, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var points)
                && points == form.Scale.Levels[place];
            if (isNumber || form.Scale.LevelNames[place].Equals(text, StringComparison.OrdinalIgnoreCase))
                return place;
        }
        gaps.Add(new BenchGap.UnknownLevel(name, text));
        return null;
    }

    private static string Text(IReadOnlyDictionary<string, string> fields, string name) => fields.GetValueOrDefault(name, "").Trim();
}
