using ClassKit.Exercises.Cohorts;

namespace ClassKit.Terms.Bench;

/// <summary>
/// What was filled in on a form, after students have left the class: everybody else keeps what they had, though places on the list and
/// teams are others then. Whoever came later was not there.
/// </summary>
public static class LeavingStudent
{
    /// <summary>The fields of the form for the class as it is after that.</summary>
    /// <param name="before">The form as it was filled in.</param>
    /// <param name="after">The same rubric for the other class list.</param>
    /// <param name="fields">What was filled in, by the names that the first form gives.</param>
    public static IReadOnlyDictionary<string, string> From(BenchForm before, BenchForm after, IReadOnlyDictionary<string, string> fields)
    {
        ArgumentNullException.ThrowIfNull(before);
        ArgumentNullException.ThrowIfNull(after);
        ArgumentNullException.ThrowIfNull(fields);
        var places = before.Students.Index().ToDictionary(one => one.Item.Id, one => one.Index);
        var own = before
            .Students.SelectMany(student => OfStudent(before, student))
            .Concat(Enumerable.Range(1, before.Teams).SelectMany(team => OfTeam(before, team)))
            .ToHashSet();
        var left = fields.Where(field => !own.Contains(field.Key)).ToDictionary(StringComparer.Ordinal);
        string Text(string field) => fields.GetValueOrDefault(field, "").Trim();
        void Put(string field, string text)
        {
            if (text.Length > 0)
                left[field] = text;
        }

        foreach (var team in Enumerable.Range(1, before.Teams))
        {
            if (after.TeamCalled(before.TeamName(team)) is not { } now)
                continue;
            foreach (var (was, field) in OfTeam(before, team).Zip(OfTeam(after, now)))
                Put(field, Text(was));
        }
        foreach (var student in after.Students)
        {
            if (!places.TryGetValue(student.Id, out var index))
            {
                left[BenchForm.TeamOfStudent(student)] = BenchForm.Away;
                continue;
            }
            foreach (var field in OfStudent(before, student))
                Put(field, Text(field));
            var said = Text(BenchForm.TeamOfStudent(student));
            var team = said.Length == 0 ? before.TeamOf(index) : before.TeamCalled(said);
            // Where the list puts nobody in a team, places on it do: those move.
            if (team is { } stays && after.TeamCalled(before.TeamName(stays)) is not null)
                left[BenchForm.TeamOfStudent(student)] = before.TeamName(stays);
            else if (team is { } gone)
                SpellOut(gone, student);
        }
        return left;

        // A team that is none any more: what it earned stands with the student from now on.
        void SpellOut(int team, Student student)
        {
            left[BenchForm.TeamOfStudent(student)] = BenchForm.Away;
            foreach (
                var (was, field) in OfTeam(before, team)
                    .Zip(OfStudent(before, student))
                    .Take(before.Scale.Criteria.Count)
                    .Where(pair => Text(pair.Second).Length == 0)
            )
                Put(field, Text(was));
            Put(
                BenchForm.CommentOfStudent(student),
                string.Join(
                    " ",
                    new[] { Text(BenchForm.CommentOfTeam(team)), Text(BenchForm.CommentOfStudent(student)) }.Where(text => text.Length > 0)
                )
            );
        }
    }

    private static IEnumerable<string> OfTeam(BenchForm form, int team) =>
        [.. form.Scale.Criteria.Select((_, at) => BenchForm.OfTeam(team, at)), BenchForm.CommentOfTeam(team)];

    private static IEnumerable<string> OfStudent(BenchForm form, Student student) =>
        [
            .. form.Scale.Criteria.Select((_, at) => BenchForm.OfStudent(student, at)),
            BenchForm.CommentOfStudent(student),
            BenchForm.TeamOfStudent(student),
        ];
}
