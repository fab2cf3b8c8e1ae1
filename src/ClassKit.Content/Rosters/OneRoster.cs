using ClassKit.Content.Diagnostics;
using ClassKit.Content.Sheets;
using ClassKit.Content.Sources;

namespace ClassKit.Content.Rosters;

/// <summary>
/// The tables of a school's records by the open standard 1EdTech OneRoster 1.2 (CSV tables): <c>users.csv</c> says who there is,
/// <c>enrollments.csv</c> who is in which class.
/// </summary>
internal static class OneRoster
{
    private const string Users = "users.csv";
    private const string Enrollments = "enrollments.csv";

    /// <summary>True for the table of enrolments, beside which the users are looked up.</summary>
    public static bool IsEnrollments(CsvRecord header) => Place(header, "usersourcedid") >= 0 && Place(header, "classsourcedid") >= 0;

    /// <summary>True for the table of users.</summary>
    public static bool IsUsers(CsvRecord header) =>
        Place(header, "sourcedid") >= 0 && Place(header, "givenname") >= 0 && Place(header, "familyname") >= 0;

    /// <summary>The table of users beside that of enrolments.</summary>
    public static Source UsersBeside(Source enrollments) => enrollments.Folder.In(Users);

    /// <summary>The ids of the students who are enrolled, where a table beside the users says so; null for whoever is a user.</summary>
    public static IReadOnlySet<string>? EnrolledBeside(Source users, ProblemList problems)
    {
        var file = users.Folder.In(Enrollments);
        if (!file.IsFile)
            return null;
        var found = new ProblemList(file.Shown);
        if (SheetTables.Read(file, found) is [{ Records: [var header, ..] } table] && IsEnrollments(header) && found.IsEmpty)
            return Enrolled(header, table, file, problems);

        // Without it the whole school would be the class.
        problems.Add(
            null,
            $"{file.Name} lies beside it and cannot be read as the table that says who is in the class",
            $"Export {Enrollments} again, with userSourcedId, classSourcedId and role, or put users.csv into a folder of its own if all of it are the class."
        );
        return null;
    }

    /// <summary>True for a user who is a student and not gone; 1.2 keeps roles in another table, 1.1 in this one.</summary>
    public static bool IsStudent(CsvRecord header, CsvRecord user) =>
        IsActive(header, user) && Field(header, user, "role") is "" or "student";

    private static HashSet<string> Enrolled(CsvRecord header, SheetTable table, Source file, ProblemList problems)
    {
        var students = table.Records.Skip(1).Where(line => IsActive(header, line) && Field(header, line, "role") == "student").ToList();
        var classes = students.Select(line => Field(header, line, "classsourcedid")).Distinct(StringComparer.Ordinal).ToList();
        if (classes.Count > 1)
            problems.Add(
                null,
                $"{file.Name} holds {classes.Count} classes: {string.Join(", ", classes.Take(5).Select(name => $"`{name}`"))}{(classes.Count > 5 ? " ..." : "")}",
                $"Put users.csv and an {Enrollments} with the lines of one class alone (its classSourcedId) into a folder of their own, and name them from there."
            );
        return [.. students.Select(line => Field(header, line, "usersourcedid"))];
    }

    private static bool IsActive(CsvRecord header, CsvRecord line) =>
        Field(header, line, "status").ToLowerInvariant() is "" or "active"
        && !Field(header, line, "enableduser").Equals("false", StringComparison.OrdinalIgnoreCase);

    private static string Field(CsvRecord header, CsvRecord line, string column) =>
        Place(header, column) is >= 0 and var place && place < line.Fields.Count ? line.Fields[place].Trim() : "";

    private static int Place(CsvRecord header, string column) => header.Fields.Select(RosterTitles.Plain).ToList().IndexOf(column);
}
