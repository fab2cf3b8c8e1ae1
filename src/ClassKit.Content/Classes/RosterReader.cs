using ClassKit.Content.Diagnostics;
using ClassKit.Content.Sources;
using ClassKit.Exercises.Cohorts;

namespace ClassKit.Content.Classes;

/// <summary>Reads a roster: comma-separated values with a header line <c>id,name,email</c>, the last of which may be left out.</summary>
public static class RosterReader
{
    private static readonly string[] Columns = ["id", "name", "email"];

    /// <summary>The roster, or everything that is wrong with its file.</summary>
    /// <param name="source">The file.</param>
    /// <param name="cohort">What the class is called; null if nothing says so: a folder's name is none.</param>
    public static Reading<Roster> Read(Source source, string? cohort = null)
    {
        ArgumentNullException.ThrowIfNull(source);
        var problems = new ProblemList(source.Shown);
        if (SourceFile.Read(source, problems) is not { } text)
            return problems.Fail<Roster>();

        var table = CsvTable.Read(text, Columns, necessary: 2, problems);
        var students = ReadStudents(table, problems);
        if (problems.IsEmpty && students.Count == 0)
            problems.Add(null, "There are no students on the roster", $"Write a line for each below the header: `amara-osei{table.Separator}Amara Osei{table.Separator}amara@example.org`.");
        return problems.Finish(() => new Roster(cohort ?? "", students));
    }

    private static List<Student> ReadStudents(CsvTable table, ProblemList problems)
    {
        var students = new List<Student>();
        var lines = new Dictionary<string, int>();
        foreach (var row in table.Rows)
        {
            var (id, name, email) = (row["id"], row["name"], row["email"]);
            if (StudentId.Remedy(id) is { } remedy)
                problems.Add(row.Line, id.Length == 0 ? "The student has no id" : $"The id is `{id}`", remedy);
            else if (!lines.TryAdd(id, row.Line))
                problems.Add(row.Line, $"The id `{id}` is in line {lines[id]} already", "Give every student an id of their own.");
            if (name.Length == 0)
                problems.Add(row.Line, $"The student `{id}` has no name", "Write the name as the student writes it.");
            students.Add(new(id, name, email.Length > 0 ? email : null));
        }
        return students;
    }
}
