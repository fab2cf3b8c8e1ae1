using ClassKit.Content.Diagnostics;
using ClassKit.Content.Sheets;
using ClassKit.Content.Sources;
using ClassKit.Content.Wording;
using ClassKit.Exercises.Cohorts;

namespace ClassKit.Content.Rosters;

/// <summary>
/// Reads a class list as schools have it: .xlsx, .ods or CSV, with columns for name (or first and last name), id and e-mail under any of
/// their usual titles, and any others.
/// </summary>
/// <remarks>
/// Lines above the titles are passed over, and so are those below the students that count them or say when they were printed. Without ids
/// they are made, of addresses or names. The tables of OneRoster 1.2 are read too; see <see cref="OneRoster"/>.
/// </remarks>
public static class RosterReader
{
    private const string Form =
        "Call one column `name`, or two `first name` and `last name`; `id` and `email` are useful, and any others are left aside.";

    /// <summary>The roster, or everything that is wrong with its file.</summary>
    /// <param name="source">The file.</param>
    /// <param name="cohort">What the class is called; null if nothing says so: a folder's name is none.</param>
    public static Reading<Roster> Read(Source source, string? cohort = null)
    {
        ArgumentNullException.ThrowIfNull(source);
        var problems = new ProblemList(source.Shown);
        if (SheetTables.Read(source, problems) is not { } tables || !problems.IsEmpty)
            return problems.Fail<Roster>();
        if (tables is [{ Records: [var header, ..] }] && OneRoster.IsEnrollments(header))
            return Read(OneRoster.UsersBeside(source), cohort);

        var (table, head) = Chosen(tables);
        if (head is null)
            return Nobody(problems, ',');
        if (!Accepts(head, problems))
            return problems.Fail<Roster>();
        var lines = table.Records.Skip(head.At + 1).ToList();
        foreach (var line in lines.Where(line => line.Fields.Skip(head.Record.Fields.Count).Any(field => field.Trim().Length > 0)))
            problems.Add(
                line.Line,
                $"The line has {line.Fields.Count} fields, and the header has {head.Record.Fields.Count}",
                "Put quotes around a field that holds the separator."
            );
        var below = lines[^RosterFoot.Count(lines)..];
        lines.RemoveRange(lines.Count - below.Count, below.Count);
        var counting = RunningNumbers.Without(head, lines);
        head = counting?.Head ?? head;
        var mine = Wanted(head, lines, source, problems);
        var (students, arrangements, ids) = RosterStudents.Of(head, mine, problems);
        if (problems.IsEmpty && students.Count == 0)
            return Nobody(problems, table.Separator);
        return problems.Finish(() =>
            new Roster(cohort ?? "", Namesakes.ToldApart(students))
            {
                Arrangements = arrangements,
                Origin = new(head.Taken, head.LeftAside, ids)
                {
                    Sheet = tables.Count > 1 ? table.Sheet : null,
                    GuessedLetters = table.GuessedLetters,
                    HiddenRows = table.HiddenRows,
                    Counting = counting?.Title,
                    Allergies = AllergyTitles.Columns(head, mine),
                    Others = lines.Count - mine.Count,
                    Below = [.. below.Select(RosterFoot.Text)],
                },
            }
        );
    }

    /// <summary>The table that names students, else the first with any titles.</summary>
    internal static (SheetTable Table, RosterHead? Head) Chosen(IReadOnlyList<SheetTable> tables) =>
        tables
            .Select(table => (Table: table, Head: RosterHead.Of(table)))
            .OrderBy(table =>
                table.Head switch
                {
                    { NamesStudents: true } => 0,
                    null => 2,
                    _ => 1,
                }
            )
            .FirstOrDefault();

    private static List<CsvRecord> Wanted(RosterHead head, List<CsvRecord> lines, Source source, ProblemList problems)
    {
        if (!OneRoster.IsUsers(head.Record))
            return lines;
        var enrolled = OneRoster.EnrolledBeside(source, problems);
        return
        [
            .. lines.Where(line => OneRoster.IsStudent(head.Record, line) && enrolled?.Contains(head.Field(line, RosterField.Id)) != false),
        ];
    }

    private static bool Accepts(RosterHead head, ProblemList problems)
    {
        var titles = head.Record.Fields.Select(title => title.Trim()).Where(title => title.Length > 0).ToList();
        foreach (
            var twice in titles
                .GroupBy(title => title, StringComparer.OrdinalIgnoreCase)
                .Where(same => same.Skip(1).Any() && RosterTitles.Meaning(same.Key) is not null)
        )
            problems.Add(head.Record.Line, $"The header has the column `{twice.Key}` twice", "Keep one of them.");
        if (!head.NamesStudents)
        {
            var meant = titles
                .Where(title => RosterTitles.Meaning(title) is null)
                .Select(title => (Title: title, Near: NearestWord.To(RosterTitles.Plain(title), RosterTitles.All)))
                .FirstOrDefault(title => title.Near is not null);
            problems.Add(
                head.Record.Line,
                $"No column holds the students' names; there are {string.Join(", ", titles.Take(12).Select(title => $"`{title}`"))}",
                meant.Near is { } near ? $"Is `{meant.Title}` meant to be `{near}`? {Form}" : Form
            );
        }
        return problems.IsEmpty;
    }

    private static Reading<Roster> Nobody(ProblemList problems, char separator)
    {
        problems.Add(
            null,
            "There are no students on the roster",
            $"Write a line for each below the header `{string.Join(separator, "id", "name", "email")}`: `amara-osei{separator}Amara Osei{separator}amara@example.org`."
        );
        return problems.Fail<Roster>();
    }
}
