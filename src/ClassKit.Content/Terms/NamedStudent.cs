using ClassKit.Content.Diagnostics;
using ClassKit.Content.Sheets;
using ClassKit.Content.Wording;
using ClassKit.Exercises.Cohorts;

namespace ClassKit.Content.Terms;

/// <summary>Finds the student whom a line of a table names, by id or by full name.</summary>
public static class NamedStudent
{
    /// <summary>What is said of a line that names nobody of the class.</summary>
    /// <param name="named">Whom it names.</param>
    public static string Unknown(string named) => $"Nobody on the roster is called `{named}`";

    private static string? Find(CsvRow row, IReadOnlyList<Student> students, ProblemList problems)
    {
        var named = row["student"];
        var found = Of(named, students);
        if (found is [var one])
            return one.Id;
        problems.Add(
            row.Line,
            found.Count > 1 ? $"Several students are called `{named}`"
                : named.Length == 0 ? "The line names no student"
                : Unknown(named),
            found.Count == 0 && Near(named, students) is { } near ? $"Did you mean `{near}`?" : "Name a student by the id on the roster."
        );
        return null;
    }

    /// <summary>
    /// Those of some lines whom the class list knows; the others, few among many, have left the class: they are told of, and their lines
    /// count for nobody. A name that is nearly somebody's is a slip.
    /// </summary>
    internal static IEnumerable<(CsvRow Row, string Student)> InClass(
        IReadOnlyList<CsvRow> rows,
        IReadOnlyList<Student> students,
        ProblemList problems
    )
    {
        var left = rows.Where(row =>
                row["student"].Length > 0 && Of(row["student"], students).Count == 0 && Near(row["student"], students) is null
            )
            .ToHashSet();
        var isOfClass = left.Count * 2 < rows.Count;
        foreach (var row in rows)
        {
            if (isOfClass && left.Contains(row))
                problems.Doubt(
                    row.Line,
                    Unknown(row["student"]),
                    "The line counts for nobody. That is right for somebody who has left the class; else name a student by the id on the roster.",
                    Weight.Noted
                );
            else if (Find(row, students, problems) is { } student)
                yield return (row, student);
        }
    }

    /// <summary>
    /// A number that is nearly another student's is that student's no more than any other: only letters can be mistyped so that it shows.
    /// </summary>
    private static string? Near(string named, IReadOnlyList<Student> students) =>
        NearestWord.To(named, students.SelectMany(student => new[] { student.Id, student.Name })) is { } near
        && Digits(near) == Digits(named)
            ? near
            : null;

    private static string Digits(string text) => string.Concat(text.Where(char.IsAsciiDigit));

    /// <summary>
    /// The students who may be meant: by id, whatever the case of its letters, else by name to the letter, else by a name that is the same
    /// but for order, capitals, accents and signs, as other programs write it.
    /// </summary>
    public static IReadOnlyList<Student> Of(string named, IReadOnlyList<Student> students)
    {
        ArgumentNullException.ThrowIfNull(named);
        ArgumentNullException.ThrowIfNull(students);
        var said = new Student("", named);
        return Found(student => student.Id.Equals(named, StringComparison.OrdinalIgnoreCase))
            ?? Found(student =>
                student.Name.Equals(named, StringComparison.OrdinalIgnoreCase)
                || student.Shown.Equals(named, StringComparison.OrdinalIgnoreCase)
            )
            ?? Found(student => SamePerson.HasSameName(student, said))
            ?? [];

        IReadOnlyList<Student>? Found(Func<Student, bool> isMeant) =>
            students.Where(isMeant).ToList() is { Count: > 0 } found ? found : null;
    }
}
