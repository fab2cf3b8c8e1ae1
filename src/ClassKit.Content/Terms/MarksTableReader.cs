using ClassKit.Content.Diagnostics;
using ClassKit.Content.Sheets;
using ClassKit.Content.Sources;
using ClassKit.Exercises.Cohorts;

namespace ClassKit.Content.Terms;

/// <summary>
/// Reads a table of typed marks: a row a student, a column a work, and <c>... resit</c> behind a work's name for its resit.
/// </summary>
internal static class MarksTableReader
{
    /// <summary>Stands behind the name of a work whose resit is meant.</summary>
    public const string Resit = " resit";

    /// <summary>What was typed, by the title of the work.</summary>
    public static Reading<ILookup<string, TypedMark>> Read(Source source, IReadOnlyList<Student> students, IReadOnlyList<PlannedWork> works)
    {
        var problems = new ProblemList(source.Shown);
        if (SourceFile.Read(source, problems) is not { } text)
            return problems.Fail<ILookup<string, TypedMark>>();
        List<(PlannedWork Work, int Sitting, string Column)> columns =
        [
            .. works.SelectMany(work =>
                new[] { (work, 1, work.Title.ToLowerInvariant()), (work, 2, work.Title.ToLowerInvariant() + Resit) }
            ),
        ];
        var marks = new List<(string Work, TypedMark Mark)>();
        var lines = new Dictionary<string, int>(StringComparer.Ordinal);
        var table = CsvTable.Read(text, ["student", .. columns.Select(column => column.Column)], 1, problems);
        foreach (var (row, student) in NamedStudent.InClass(table.Rows, students, problems))
        {
            if (!lines.TryAdd(student, row.Line))
                problems.Add(row.Line, $"`{student}` is in line {lines[student]} already", "Keep one line for each student.");
            foreach (var (work, sitting, column) in columns.Where(column => row[column.Column].Length > 0))
            {
                if (
                    MarkCell.Read(row[column], students.First(one => one.Id == student).Shown, work, table.Separator, row.Line, problems) is
                    { } mark
                )
                    marks.Add((work.Title, new(student, sitting, mark, source.Shown, row.Line)));
            }
        }
        return problems.Finish(() => marks.ToLookup(mark => mark.Work, mark => mark.Mark));
    }
}
