using ClassKit.Exercises.Cohorts;
using ClassKit.Exercises.Identity;

namespace ClassKit.Terms.Bench;

/// <summary>A form that was made before the class list changed, found again by who stands in what was filled in.</summary>
public static class EarlierForm
{
    /// <summary>More teams are no form's, however its list was changed.</summary>
    private const int MostTeams = 100;

    private const string Before = "student.",
        Behind = ".team";

    /// <summary>
    /// The form that was filled in; null where it was another class's, another rubric's, or does not say for whom it was made.
    /// </summary>
    /// <param name="now">The form of the class as it is now.</param>
    /// <param name="listed">Who stands in what was filled in, in its order, each with the name of their team where it says one.</param>
    /// <param name="isIt">Whether a form is the one that the file says it is of.</param>
    public static BenchForm? Of(BenchForm now, IReadOnlyList<Student> listed, Func<BenchForm, bool> isIt)
    {
        ArgumentNullException.ThrowIfNull(now);
        ArgumentNullException.ThrowIfNull(listed);
        ArgumentNullException.ThrowIfNull(isIt);
        if (listed.Count == 0 || !ChangedList.IsOfSameClass([.. listed.Select(student => student.Id)], now.Students))
            return null;
        var known = now.Students.ToDictionary(student => student.Id);
        List<Student> students =
        [
            .. listed.Select(student => known.TryGetValue(student.Id, out var same) ? same with { Team = student.Team } : student),
        ];
        return Enumerable.Range(1, MostTeams).Select(teams => now with { Students = students, Teams = teams }).FirstOrDefault(isIt);
    }

    /// <summary>Who stands in the fields of a page: it says everybody's team.</summary>
    /// <param name="fields">What was filled in, in the order of the page.</param>
    public static IReadOnlyList<Student> ListedIn(IReadOnlyDictionary<string, string> fields)
    {
        ArgumentNullException.ThrowIfNull(fields);
        return
        [
            .. fields
                .Where(field =>
                    field.Key.StartsWith(Before, StringComparison.Ordinal)
                    && field.Key.EndsWith(Behind, StringComparison.Ordinal)
                    && field.Key.Length > Before.Length + Behind.Length
                )
                .Select(field => (Id: field.Key[Before.Length..^Behind.Length], Team: field.Value.Trim()))
                .Select(one => new Student(one.Id, one.Id)
                {
                    Team = one.Team.Length == 0 || one.Team.Equals(BenchForm.Away, StringComparison.OrdinalIgnoreCase) ? null : one.Team,
                }),
        ];
    }

    /// <summary>True of a file that calls itself by the class's name: ids that are bare numbers are in every class.</summary>
    public static bool IsCalledBy(BenchForm now, string? called)
    {
        ArgumentNullException.ThrowIfNull(now);
        return FormName.ClassIn(called, now.Rubric) == now.Cohort;
    }
}
