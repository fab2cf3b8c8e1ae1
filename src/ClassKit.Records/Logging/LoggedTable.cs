namespace ClassKit.Records.Logging;

/// <summary>A table of which the log keeps what rows were before they were changed or taken away.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Moments">What makes the log keep a row.</param>
/// <param name="Shown">The parts of the text that the log keeps, as SQL in which <c>row</c> is the row; what is not there is left out.
/// A row that shows the same before and after was not changed.</param>
/// <param name="Student">Whose the row is, in the same way; null for a table whose rows are nobody's. A row that is nobody's any more
/// is not kept: its student was erased.</param>
internal sealed record LoggedTable(string Name, LoggedMoments Moments, string Shown, string? Student = null)
{
    private const string TitleOfWork = "(SELECT title FROM work WHERE id = row.work)";
    private const string CodeOfDeal = "(SELECT code FROM deal WHERE id = row.deal)";
    private const string SheetOfMark = """
        (SELECT concat_ws(' ', title, sitting, marker) FROM bench_sheet JOIN work ON work.id = bench_sheet.work WHERE bench_sheet.id = row.sheet)
        """;
    private const string SheetOfLevel = """
        (SELECT concat_ws(' ', title, sitting, marker) FROM bench_mark JOIN bench_sheet ON bench_sheet.id = bench_mark.sheet JOIN work ON work.id = bench_sheet.work WHERE bench_mark.id = row.mark)
        """;
    private const string Levels = """
        (SELECT group_concat(concat(bench_criterion.name, ': ', coalesce(bench_level.name, '-')), ', ' ORDER BY criterion) FROM bench_mark_level AS seen
        JOIN bench_criterion ON bench_criterion.work = seen.work AND bench_criterion.place = criterion
        LEFT JOIN bench_level ON bench_level.work = seen.work AND bench_level.place = level WHERE mark = row.id)
        """;
    private const string Level = """
        concat((SELECT name FROM bench_criterion WHERE work = row.work AND place = row.criterion), ': ',
        coalesce((SELECT name FROM bench_level WHERE work = row.work AND place = row.level), '-'))
        """;

    /// <summary>
    /// Whatever decides a grade and can be changed. Other tables only grow, or lose nothing but what is an erased student's.
    /// </summary>
    public static IReadOnlyList<LoggedTable> All { get; } =
    [
        new("class", LoggedMoments.Changed, "row.name"),
        new("student", LoggedMoments.Changed, "row.name, row.email", "row.id"),
        new("enrolment", LoggedMoments.Changed, "coalesce(row.until, 'open')", "row.student"),
        new("arrangement", LoggedMoments.Changed, "row.what, coalesce(row.until, 'open')", "row.student"),
        new("lesson_given", LoggedMoments.Changed, "row.lesson, row.day, row.title"),
        new("observation", LoggedMoments.Changed, "row.team, row.bread, row.measured, row.value, row.unit, row.remark"),
        new("term", LoggedMoments.Changed, "row.title, row.begins, row.ends"),
        new("work", LoggedMoments.Changed, "row.title, row.kind, row.category, row.out_of, row.assigned, row.due"),
        new("work_deal", LoggedMoments.Both, $"{TitleOfWork}, row.sitting, {CodeOfDeal}"),
        new(
            "typed_mark",
            LoggedMoments.Both,
            $"{TitleOfWork}, row.sitting, row.state, row.points, row.out_of, row.lateness",
            "row.student"
        ),
        new("bench_criterion", LoggedMoments.TakenAway, $"{TitleOfWork}, row.place, row.name, row.weight"),
        new("bench_level", LoggedMoments.TakenAway, $"{TitleOfWork}, row.place, row.name, row.points"),
        new("bench_sheet", LoggedMoments.Changed, $"{TitleOfWork}, row.sitting, row.place, row.marker"),
        new("bench_mark", LoggedMoments.Both, $"{SheetOfMark}, {Levels}, row.comment", "row.student"),
        new("bench_mark_level", LoggedMoments.Changed, $"{SheetOfLevel}, {Level}", "(SELECT student FROM bench_mark WHERE id = row.mark)"),
    ];

    /// <summary>The SQL of the triggers that keep it, which last as long as the connection that makes them.</summary>
    public IEnumerable<string> Triggers()
    {
        if (Moments.HasFlag(LoggedMoments.Changed))
            yield return $"""
                CREATE TEMP TRIGGER {Name}_changed AFTER UPDATE ON main.{Name}
                WHEN {IsSomebodys("new")} AND {Text("old")} IS NOT {Text("new")} BEGIN
                {Keep("new", Text("old"), Text("new"))}
                END
                """;
        // Before it goes, while what refers to it is there as well.
        if (Moments.HasFlag(LoggedMoments.TakenAway))
            yield return $"""
                CREATE TEMP TRIGGER {Name}_taken_away BEFORE DELETE ON main.{Name} WHEN {IsSomebodys("old")} BEGIN
                {Keep("old", Text("old"), "NULL")}
                END
                """;
    }

    private string IsSomebodys(string row) => Student is null ? "TRUE" : $"{Of(row, Student)} IS NOT NULL";

    private string Text(string row) => $"concat_ws(' ', {Of(row, Shown)})";

    private string Keep(string row, string before, string after) =>
        $"""
            INSERT INTO changed_row (change, of_table, student, before, after)
            VALUES ((SELECT max(id) FROM change), '{Name}', {Of(row, Student ?? "NULL")}, {before}, {after});
            """;

    private static string Of(string row, string sql) => sql.Replace("row.", row + ".", StringComparison.Ordinal);
}
