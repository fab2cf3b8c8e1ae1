using System.Text;
using ClassKit.Content.Diagnostics;
using ClassKit.Content.Sheets;
using ClassKit.Exercises.Cohorts;

namespace ClassKit.Content.Terms;

/// <summary>
/// A table with a line a student, such as that of marks: some of its columns typed anew, everything else as it was, in the table's own way.
/// </summary>
public static class StudentTable
{
    private const string Student = "student";
    private const string Mark = "\uFEFF";

    /// <summary>What stands in a column, by students' ids; those without a line or with an empty cell are left out.</summary>
    /// <param name="table">The bytes of a table that its reader could read.</param>
    /// <param name="students">The class.</param>
    /// <param name="column">The column's heading.</param>
    public static IReadOnlyDictionary<string, string> Column(byte[] table, IReadOnlyList<Student> students, string column)
    {
        var (_, head, rows) = Read(table);
        var at = Place(head, column);
        return rows.Where(row => at >= 0 && at < row.Count && row[at].Trim().Length > 0)
            .Select(row => (Id: IdOf(row, head, students), Cell: row[at].Trim()))
            .Where(cell => cell.Id is not null)
            .DistinctBy(cell => cell.Id)
            .ToDictionary(cell => cell.Id!, cell => cell.Cell);
    }

    /// <summary>
    /// The table with other cells: columns that are not there stand behind the others, students who are not there below them.
    /// </summary>
    /// <param name="table">The bytes of a table that its reader could read; null to begin one.</param>
    /// <param name="students">The class.</param>
    /// <param name="columns">The columns that are typed.</param>
    /// <param name="cell">What is typed for a student in one of them; a student without any gets no line that was not there.</param>
    public static byte[] With(
        byte[]? table,
        IReadOnlyList<Student> students,
        IReadOnlyList<string> columns,
        Func<Student, string, string> cell
    )
    {
        ArgumentNullException.ThrowIfNull(students);
        ArgumentNullException.ThrowIfNull(columns);
        ArgumentNullException.ThrowIfNull(cell);
        var (shape, head, rows) = Read(table ?? []);
        if (head.Count == 0)
            head.Add(Student);
        head.AddRange(columns.Where(column => Place(head, column) < 0));
        foreach (var student in students)
        {
            var row = rows.Find(one => IdOf(one, head, students) == student.Id);
            if (row is null)
            {
                if (columns.All(column => cell(student, column).Length == 0))
                    continue;
                rows.Add(
                    row = [.. head.Select(heading => heading.Trim().Equals(Student, StringComparison.OrdinalIgnoreCase) ? student.Id : "")]
                );
            }
            while (row.Count < head.Count)
                row.Add("");
            foreach (var column in columns)
                row[Place(head, column)] = cell(student, column);
        }
        var text = string.Concat(rows.Prepend(head).Select(shape.Line));
        return Encoding.UTF8.GetBytes(Encoding.UTF8.GetString(table ?? []).StartsWith(Mark, StringComparison.Ordinal) ? Mark + text : text);
    }

    /// <summary>The table without some of its columns.</summary>
    /// <param name="table">The bytes of a table that its reader could read.</param>
    /// <param name="columns">Headings; those that are not there are none.</param>
    /// <returns>Null where none of them is there.</returns>
    public static byte[]? Without(byte[] table, IReadOnlyList<string> columns)
    {
        ArgumentNullException.ThrowIfNull(columns);
        var (shape, head, rows) = Read(table);
        List<int> going = [.. columns.Select(column => Place(head, column)).Where(at => at >= 0).OrderDescending()];
        if (going.Count == 0)
            return null;
        foreach (var row in rows.Prepend(head))
        {
            foreach (var at in going.Where(at => at < row.Count))
                row.RemoveAt(at);
        }
        var text = string.Concat(rows.Prepend(head).Select(shape.Line));
        return Encoding.UTF8.GetBytes(Encoding.UTF8.GetString(table).StartsWith(Mark, StringComparison.Ordinal) ? Mark + text : text);
    }

    private static (CsvShape Shape, List<string> Head, List<List<string>> Rows) Read(byte[] table)
    {
        var text = Encoding.UTF8.GetString(table).TrimStart('\uFEFF');
        var shape = CsvShape.Of(text);
        var records = CsvReader
            .Read(text.ReplaceLineEndings("\n"), shape.Separator, new ProblemList(""))
            .Where(record => !record.IsBlank)
            .Select(record => record.Fields.ToList())
            .ToList();
        return (shape, records.Count == 0 ? [] : records[0], [.. records.Skip(1)]);
    }

    private static int Place(List<string> head, string column) =>
        head.FindIndex(heading => heading.Trim().Equals(column, StringComparison.OrdinalIgnoreCase));

    private static string? IdOf(List<string> row, List<string> head, IReadOnlyList<Student> students) =>
        Place(head, Student) is >= 0 and var at && at < row.Count && NamedStudent.Of(row[at].Trim(), students) is [var one] ? one.Id : null;
}
