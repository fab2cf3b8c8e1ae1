using ClassKit.Content.Diagnostics;
using ClassKit.Exercises.Cohorts;
using ClassKit.Terms.Bench;

namespace ClassKit.Desk.Marks;

/// <summary>
/// Levels as they were typed at the desk: a student's own, or else what was chosen for the whole team or for everybody at once.
/// </summary>
/// <param name="Form">What is filled in.</param>
/// <param name="Typed">What stands in a field; empty if nothing.</param>
/// <param name="Away">By their ids, students of whom a word stands in place of a mark: what is chosen for many is not meant for
/// them.</param>
internal sealed record TypedBench(BenchForm Form, Func<string, string> Typed, IReadOnlyDictionary<string, string> Away)
{
    /// <summary>Stands for everybody where a field names a student; no student's id has brackets.</summary>
    public const string Everybody = "(all)";

    /// <summary>Stands for a team.</summary>
    public static string Team(int number) => string.Create(System.Globalization.CultureInfo.InvariantCulture, $"(team {number})");

    /// <summary>The field that says which counts of levels and an excuse of the same student.</summary>
    public const string Which = "which";

    /// <summary>In <see cref="Which"/>: the levels count, and the word goes.</summary>
    public const string LevelsCount = "levels";

    /// <summary>In <see cref="Which"/>: the excuse counts, and the levels stay in their file.</summary>
    public const string ExcuseCounts = "excuse";

    /// <summary>Who has a level and, beside it, a word that says that they have no mark: neither is kept before one of them goes.</summary>
    /// <param name="word">What was chosen in place of a student's mark; empty for nothing.</param>
    public IReadOnlyList<Diagnostic> Contradicted(Func<string, string> word)
    {
        ArgumentNullException.ThrowIfNull(word);
        return
        [
            .. Form
                .Students.Where(student => word(student.Id) is "absent" or "not due" && HasLevels(student.Id))
                .Select(student => new Diagnostic(
                    student.Shown,
                    null,
                    $"{student.Shown} has levels, and “{word(student.Id)}” is chosen as well",
                    "Take the levels away, or the word."
                )),
        ];
    }

    /// <summary>Who has a level of their own and is excused: only the instructor knows which of the two is meant.</summary>
    /// <param name="word">What was chosen in place of a student's mark; empty for nothing.</param>
    public IReadOnlyList<Student> Excused(Func<string, string> word)
    {
        ArgumentNullException.ThrowIfNull(word);
        return [.. Form.Students.Where(student => word(student.Id) == "excused" && HasLevels(student.Id))];
    }

    private bool HasLevels(string student) =>
        Form.Scale.Criteria.Any(criterion => Typed(WorkPage.Field(Form, student, criterion.Name)).Length > 0);

    /// <summary>The cell of a student in a criterion, or of their comment.</summary>
    public string Cell(string student, string column)
    {
        string Of(string who) => Typed(WorkPage.Field(Form, who, column));
        var at = Form.Students.Index().First(one => one.Item.Id == student).Index;
        string[] from = Away.ContainsKey(student) ? [student] : [student, Team(Form.TeamOf(at)), Everybody];
        return from.Select(Of).FirstOrDefault(text => text.Length > 0) ?? "";
    }
}
