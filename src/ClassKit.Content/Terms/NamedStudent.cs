using ClassKit.Content.Diagnostics;
using ClassKit.Content.Sheets;
using ClassKit.Content.Wording;
using ClassKit.Exercises.Cohorts;

namespace ClassKit.Content.Terms;

/// <summary>Finds the student whom a line of a table names, by id or by full name.</summary>
internal static class NamedStudent
{
    public static string? Find(CsvRow row, IReadOnlyList<Student> students, ProblemList problems)
    {
        var named = row["student"];
        var found = Of(named, students);
        if (found is [var one]) return one.Id;
        problems.Add(
            row.Line,
            found.Count > 1 ? $"Several students are called `{named}`" : named.Length == 0 ? "The line names no student" : $"Nobody on the roster is called `{named}`",
            found.Count == 0 && NearestWord.To(named, students.SelectMany(student => new[] { student.Id, student.Name })) is { } near ? $"Did you mean `{near}`?" : "Name a student by the id on the roster.");
        return null;
    }

    /// <summary>The students who may be meant.</summary>
    public static IReadOnlyList<Student> Of(string named, IReadOnlyList<Student> students)
    {
        var found = students.Where(student => student.Id == named).ToList();
        return found.Count > 0 ? found : [.. students.Where(student => student.Name.Equals(named, StringComparison.OrdinalIgnoreCase) || student.Shown.Equals(named, StringComparison.OrdinalIgnoreCase))];
    }
}
