using System.Text.RegularExpressions;
using ClassKit.Content.Classes;
using ClassKit.Content.Diagnostics;
using ClassKit.Content.Sources;
using ClassKit.Content.Wording;
using ClassKit.Exercises;

namespace ClassKit.Content;

/// <summary>Reads a roster: comma-separated values with a header line <c>id,name,email</c>, the last of which may be left out.</summary>
/// <remarks>RFC 4180; also with a byte order mark, with any line ends, and with <c>;</c> or tabs between the fields.</remarks>
public static partial class RosterReader
{
    private static readonly string[] Columns = ["id", "name", "email"];

    /// <summary>The roster, or everything that is wrong with its file.</summary>
    /// <param name="path">The file.</param>
    /// <param name="cohort">What the class is called; null for the name of the file's folder.</param>
    public static Reading<Roster> Read(string path, string? cohort = null)
    {
        ArgumentNullException.ThrowIfNull(path);
        var problems = new ProblemList(ContentPath.Shown(path));
        if (SourceFile.Read(path, problems) is not { } text)
            return problems.Fail<Roster>();

        var separator = CsvReader.SeparatorOf(text);
        List<CsvRecord> records = [.. CsvReader.Read(text, separator, problems).Where(record => !record.IsBlank)];
        var students = records.Count > 0 && ReadHeader(records[0], separator, problems) is { } places ? ReadStudents(records, places, problems) : [];
        if (problems.IsEmpty && students.Count == 0)
            problems.Add(null, "There are no students on the roster", $"Write a line for each below the header: `amara-osei{separator}Amara Osei{separator}amara@example.org`.");
        return problems.Finish(() => new Roster(cohort ?? Path.GetFileName(Path.GetDirectoryName(Path.GetFullPath(path))!), students));
    }

    private static Dictionary<string, int>? ReadHeader(CsvRecord header, char separator, ProblemList problems)
    {
        var before = problems.Count;
        var places = new Dictionary<string, int>();
        for (var i = 0; i < header.Fields.Count; i++)
        {
            var column = header.Fields[i].Trim().ToLowerInvariant();
            if (!Columns.Contains(column))
                problems.Add(header.Line, $"The header has a column `{header.Fields[i].Trim()}`, which is not known here", NearestWord.Advice(column, Columns));
            else if (!places.TryAdd(column, i))
                problems.Add(header.Line, $"The header has the column `{column}` twice", "Keep one of them.");
        }
        foreach (var missing in Columns.Take(2).Where(column => !places.ContainsKey(column)))
            problems.Add(header.Line, $"The header has no column `{missing}`", $"The first line reads `{string.Join(separator, Columns)}`.");
        return problems.Count == before ? places : null;
    }

    private static List<Student> ReadStudents(List<CsvRecord> records, Dictionary<string, int> places, ProblemList problems)
    {
        var students = new List<Student>();
        var lines = new Dictionary<string, int>();
        foreach (var record in records.Skip(1))
        {
            if (record.Fields.Count > places.Count)
                problems.Add(record.Line, $"The line has {record.Fields.Count} fields, and the header has {places.Count}", "Put quotes around a field that holds the separator.");
            string Field(string column) => places.TryGetValue(column, out var place) && place < record.Fields.Count ? record.Fields[place].Trim() : "";
            var (id, name, email) = (Field("id"), Field("name"), Field("email"));
            if (!Id().IsMatch(id))
                problems.Add(record.Line, id.Length == 0 ? "The student has no id" : $"The id is `{id}`", "Use lower-case letters a to z, digits, - and _, beginning with a letter or digit: it becomes a file's name.");
            else if (!lines.TryAdd(id, record.Line))
                problems.Add(record.Line, $"The id `{id}` is in line {lines[id]} already", "Give every student an id of their own.");
            if (name.Length == 0)
                problems.Add(record.Line, $"The student `{id}` has no name", "Write the name as the student writes it.");
            students.Add(new(id, name, email.Length > 0 ? email : null));
        }
        return students;
    }

    [GeneratedRegex("^[a-z0-9][a-z0-9_-]{0,63}$")]
    private static partial Regex Id();
}
