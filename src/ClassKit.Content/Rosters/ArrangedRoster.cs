using ClassKit.Content.Diagnostics;
using ClassKit.Content.Sheets;
using ClassKit.Exercises.Cohorts;

namespace ClassKit.Content.Rosters;

/// <summary>
/// A class list in plain text in which it is typed anew what was arranged with single students: only the lines of those for whom something
/// changes are written; remarks, order and every other line stay as they are.
/// </summary>
public static class ArrangedRoster
{
    /// <summary>The columns, as they are called where a list has none of them yet.</summary>
    public static IReadOnlyList<string> Columns { get; } = ["large print", "extra time", "due", "leaves out", "excused from"];

    /// <summary>True if a cell of <c>large print</c> says yes.</summary>
    public static bool IsYes(string cell) => ArrangementCells.IsYes(cell);

    /// <summary>True if a cell says something of one work alone, so that no tick can stand for it.</summary>
    public static bool NamesWork(string cell) => CellPieces.NamesWork(cell);

    /// <summary>
    /// What stands in a column for a student; empty where nothing does. Null for a list that cannot be changed so: a workbook, tables of
    /// OneRoster, other letters than UTF-8.
    /// </summary>
    /// <param name="text">The list, with line feeds alone and without a mark.</param>
    /// <param name="students">Its students, as <see cref="RosterReader"/> reads them.</param>
    public static Func<Student, string, string>? Cells(string text, IReadOnlyList<Student> students)
    {
        if (Lines(text, students) is not var (head, lines))
            return null;
        var places = students.Select(student => student.Id).Zip(lines).ToDictionary(pair => pair.First, pair => pair.Second);
        return (student, column) =>
            Place(head, column) is >= 0 and var at && at < places[student.Id].Fields.Count ? places[student.Id].Fields[at].Trim() : "";
    }

    /// <summary>
    /// The list with other cells; a column that is not there comes behind the others. The same text where nothing changes, null where
    /// <see cref="Cells"/> is null.
    /// </summary>
    /// <param name="text">The list, with line feeds alone and without a mark.</param>
    /// <param name="students">Its students, as <see cref="RosterReader"/> reads them.</param>
    /// <param name="typed">What is to stand for a student in a column.</param>
    public static string? With(string text, IReadOnlyList<Student> students, Func<Student, string, string> typed) =>
        With(text, students, Columns, typed);

    /// <summary>The same of any columns that a list is read for, such as <c>id</c>.</summary>
    /// <param name="text">The list, with line feeds alone and without a mark.</param>
    /// <param name="students">Its students, as <see cref="RosterReader"/> reads them.</param>
    /// <param name="columns">The columns.</param>
    /// <param name="typed">What is to stand for a student in a column.</param>
    public static string? With(
        string text,
        IReadOnlyList<Student> students,
        IReadOnlyList<string> columns,
        Func<Student, string, string> typed
    )
    {
        ArgumentNullException.ThrowIfNull(text);
        ArgumentNullException.ThrowIfNull(students);
        ArgumentNullException.ThrowIfNull(columns);
        ArgumentNullException.ThrowIfNull(typed);
        if (Lines(text, students) is not var (head, lines) || Cells(text, students) is not { } before)
            return null;
        var changed = students.Index().Where(one => columns.Any(column => typed(one.Item, column) != before(one.Item, column))).ToList();
        List<string> added =
        [
            .. columns.Where(column => Place(head, column) < 0 && students.Any(student => typed(student, column).Length > 0)),
        ];
        List<string> titles = [.. head.Record.Fields, .. added];
        var shape = new CsvShape(CsvReader.SeparatorOf(text), "");
        var raw = text.Split('\n').ToList();
        List<(CsvRecord Record, IReadOnlyList<string> Fields)> written =
        [
            .. changed.Select(one => (lines[one.Index], Row(lines[one.Index], one.Item))),
        ];
        if (added.Count > 0)
            written.Add((head.Record, titles));
        foreach (var (record, fields) in written.OrderByDescending(one => one.Record.Line))
        {
            raw.RemoveRange(record.Line - 1, Height(record));
            raw.Insert(record.Line - 1, shape.Line(fields));
        }
        return string.Join('\n', raw);

        IReadOnlyList<string> Row(CsvRecord line, Student student)
        {
            List<string> fields = [.. line.Fields, .. Enumerable.Repeat("", Math.Max(0, titles.Count - line.Fields.Count))];
            foreach (var column in columns)
            {
                var at = Place(head, column) is >= 0 and var there ? there : titles.IndexOf(column);
                if (at >= 0 && typed(student, column) != before(student, column))
                    fields[at] = typed(student, column);
            }
            return fields;
        }
    }

    /// <summary>
    /// The list with nothing but its titles, its students and the columns that are read for something; null where <see cref="Cells"/> is
    /// null.
    /// </summary>
    /// <param name="text">The list, with line feeds alone and without a mark.</param>
    /// <param name="students">Its students, as <see cref="RosterReader"/> reads them.</param>
    public static string? OnlyTaken(string text, IReadOnlyList<Student> students)
    {
        ArgumentNullException.ThrowIfNull(text);
        ArgumentNullException.ThrowIfNull(students);
        if (Lines(text, students) is not var (head, lines))
            return null;
        List<int> places = [.. head.Places.Values.Order()];
        var shape = new CsvShape(CsvReader.SeparatorOf(text), "\n");
        return string.Concat(
            lines.Prepend(head.Record).Select(line => shape.Line(places.Select(at => at < line.Fields.Count ? line.Fields[at].Trim() : "")))
        );
    }

    /// <summary>True if a list has a column.</summary>
    /// <param name="text">The list, with line feeds alone and without a mark.</param>
    /// <param name="students">Its students, as <see cref="RosterReader"/> reads them.</param>
    /// <param name="column">What it is called, here or in another school.</param>
    public static bool Has(string text, IReadOnlyList<Student> students, string column) =>
        Lines(text, students) is var (head, _) && Place(head, column) >= 0;

    /// <summary>A field in quotes may run over lines.</summary>
    private static int Height(CsvRecord record) => 1 + record.Fields.Sum(field => field.Count(letter => letter == '\n'));

    private static int Place(RosterHead head, string column) =>
        RosterTitles.Meaning(column) is { } meaning && head.Places.TryGetValue(meaning.Field, out var at) ? at : -1;

    private static (RosterHead Head, IReadOnlyList<CsvRecord> Lines)? Lines(string text, IReadOnlyList<Student> students)
    {
        var problems = new ProblemList("");
        var table = SheetTables.OfText(text, problems);
        if (
            !problems.IsEmpty
            || text.Contains('\uFFFD', StringComparison.Ordinal)
            || RosterHead.Of(table) is not { NamesStudents: true } head
            || OneRoster.IsUsers(head.Record)
        )
            return null;
        var lines = table.Records.Skip(head.At + 1).ToList();
        lines.RemoveRange(lines.Count - RosterFoot.Count(lines), RosterFoot.Count(lines));
        return lines.Count == students.Count ? (RunningNumbers.Without(head, lines)?.Head ?? head, lines) : null;
    }
}
