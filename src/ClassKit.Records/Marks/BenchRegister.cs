using ClassKit.Records.Changes;
using ClassKit.Records.Storage;
using ClassKit.Records.Terms;
using ClassKit.Terms.Bench;

namespace ClassKit.Records.Marks;

/// <summary>What markers saw at the bench.</summary>
public static class BenchRegister
{
    private static readonly BenchSheet NothingSeen = new("", new Dictionary<string, IReadOnlyList<int>>());

    /// <summary>Puts on record what a work is marked with.</summary>
    /// <returns>
    /// False if another scale is on record with which somebody has marked already: then nothing is written, for their levels would mean
    /// something else.
    /// </returns>
    public static bool Measure(WritingSession session, RecordedWork work, BenchScale scale)
    {
        ArgumentNullException.ThrowIfNull(session);
        ArgumentNullException.ThrowIfNull(work);
        ArgumentNullException.ThrowIfNull(scale);
        if (Scale(session, work) is { } known)
        {
            if (
                known.Criteria.SequenceEqual(scale.Criteria)
                && known.Levels.SequenceEqual(scale.Levels)
                && known.LevelNames.SequenceEqual(scale.LevelNames)
            )
                return true;
            if (session.Number("SELECT count(*) FROM bench_sheet WHERE work = $1", work.Id) > 0)
                return false;
            session.Run("DELETE FROM bench_criterion WHERE work = $1", work.Id);
            session.Run("DELETE FROM bench_level WHERE work = $1", work.Id);
        }
        foreach (var (place, (name, weight)) in scale.Criteria.Index())
            session.Run("INSERT INTO bench_criterion (work, place, name, weight) VALUES ($1, $2, $3, $4)", work.Id, place, name, weight);
        foreach (var (place, (points, name)) in scale.Levels.Zip(scale.LevelNames).Index())
            session.Run("INSERT INTO bench_level (work, place, name, points) VALUES ($1, $2, $3, $4)", work.Id, place, name, points);
        return true;
    }

    /// <summary>
    /// Puts on record what a marker saw: students of the sheet in place of what is there of them, their comments too, whether they have
    /// levels or only words, and leaves others as they are.
    /// </summary>
    /// <param name="session">Writes.</param>
    /// <param name="work">The work, whose scale is on record.</param>
    /// <param name="sitting">1 for the first.</param>
    /// <param name="marker">1 for the first marker, 2 for the second.</param>
    /// <param name="sheet">What was seen.</param>
    public static void Put(WritingSession session, RecordedWork work, int sitting, int marker, BenchSheet sheet)
    {
        ArgumentNullException.ThrowIfNull(session);
        ArgumentNullException.ThrowIfNull(work);
        ArgumentNullException.ThrowIfNull(sheet);
        session.Run(
            "INSERT INTO bench_sheet (work, sitting, place, marker, change) VALUES ($1, $2, $3, $4, $5) ON CONFLICT DO UPDATE SET marker = $4, change = $5",
            work.Id,
            sitting,
            marker,
            sheet.Marker,
            session.ChangeId
        );
        var id = session.Number("SELECT id FROM bench_sheet WHERE work = $1 AND sitting = $2 AND place = $3", work.Id, sitting, marker);
        foreach (var (student, levels) in sheet.Places)
            Put(session, work, id!.Value, student, levels, Values.OrNull(sheet.Comments.GetValueOrDefault(student)));
        foreach (var (student, comment) in sheet.Comments.Where(said => !sheet.Places.ContainsKey(said.Key)))
        {
            // Words may be all that was seen. Levels that stood there before are gone from the file, and the log keeps them.
            session.Run(
                "DELETE FROM bench_mark WHERE sheet = $1 AND student = $2 AND EXISTS (SELECT 1 FROM bench_mark_level WHERE mark = bench_mark.id)",
                id!.Value,
                student
            );
            Put(session, work, id!.Value, student, [], Values.OrNull(comment));
        }
    }

    private static void Put(
        WritingSession session,
        RecordedWork work,
        long sheet,
        string student,
        IReadOnlyList<int> levels,
        string? comment
    )
    {
        var isNew =
            session.Run(
                "INSERT INTO bench_mark (sheet, student, comment, change) VALUES ($1, $2, $3, $4) ON CONFLICT DO NOTHING",
                sheet,
                student,
                comment,
                session.ChangeId
            ) > 0;
        var mark = session.Number("SELECT id FROM bench_mark WHERE sheet = $1 AND student = $2", sheet, student);
        var changed = 0;
        foreach (var (criterion, level) in levels.Index())
            changed += session.Run(
                "INSERT INTO bench_mark_level (mark, criterion, work, level) VALUES ($1, $2, $3, $4) ON CONFLICT DO UPDATE SET level = $4 WHERE level IS NOT $4",
                mark,
                criterion,
                work.Id,
                level == BenchScale.NotAsked ? null : level
            );
        if (!isNew)
            session.Run(
                "UPDATE bench_mark SET comment = $2, change = $3 WHERE id = $1 AND ($4 OR comment IS NOT $2)",
                mark,
                comment,
                session.ChangeId,
                changed > 0
            );
    }

    /// <summary>Whom which marker saw in which sitting of a work.</summary>
    public static IReadOnlyList<(int Sitting, int Marker, string Student)> Marked(RecordSession session, RecordedWork work)
    {
        ArgumentNullException.ThrowIfNull(session);
        ArgumentNullException.ThrowIfNull(work);
        return session.Query(
            "SELECT sitting, place, student FROM bench_sheet JOIN bench_mark ON bench_mark.sheet = bench_sheet.id WHERE work = $1 AND student IS NOT NULL ORDER BY sitting, place, bench_mark.id",
            row => (row.Whole(0), row.Whole(1), row.Text(2)),
            work.Id
        );
    }

    /// <summary>Takes away what a marker saw of a student.</summary>
    /// <returns>False if there is nothing of them.</returns>
    public static bool TakeAway(WritingSession session, RecordedWork work, int sitting, int marker, string student)
    {
        ArgumentNullException.ThrowIfNull(session);
        ArgumentNullException.ThrowIfNull(work);
        return session.Run(
                "DELETE FROM bench_mark WHERE student = $4 AND sheet = (SELECT id FROM bench_sheet WHERE work = $1 AND sitting = $2 AND place = $3)",
                work.Id,
                sitting,
                marker,
                student
            ) > 0;
    }

    /// <summary>What a work is marked with, or null.</summary>
    public static BenchScale? Scale(RecordSession session, RecordedWork work)
    {
        ArgumentNullException.ThrowIfNull(session);
        ArgumentNullException.ThrowIfNull(work);
        var criteria = session.Query(
            "SELECT name, weight FROM bench_criterion WHERE work = $1 ORDER BY place",
            row => (row.Text(0), row.Points(1)),
            work.Id
        );
        var levels = session.Query(
            "SELECT points, name FROM bench_level WHERE work = $1 ORDER BY place",
            row => (Points: row.Points(0), Name: row.Text(1)),
            work.Id
        );
        return criteria.Count == 0
            ? null
            : new(criteria, [.. levels.Select(level => level.Points)], [.. levels.Select(level => level.Name)]);
    }

    /// <summary>What was seen in a work, by sitting. Erased students are not among it.</summary>
    public static IReadOnlyList<RecordedBench> Of(RecordSession session, RecordedWork work)
    {
        ArgumentNullException.ThrowIfNull(session);
        ArgumentNullException.ThrowIfNull(work);
        if (Scale(session, work) is not { } scale)
            return [];
        var levels = session
            .Query(
                "SELECT mark, level FROM bench_sheet JOIN bench_mark ON bench_mark.sheet = bench_sheet.id JOIN bench_mark_level ON mark = bench_mark.id WHERE bench_sheet.work = $1 ORDER BY mark, criterion",
                row => (Mark: row.Number(0), Level: row.WholeOrNull(1) ?? BenchScale.NotAsked),
                work.Id
            )
            .ToLookup(seen => seen.Mark, seen => seen.Level);
        var marks = session.Query(
            "SELECT sitting, place, marker, student, comment, bench_mark.id FROM bench_sheet JOIN bench_mark ON bench_mark.sheet = bench_sheet.id WHERE work = $1 AND student IS NOT NULL ORDER BY sitting, place, bench_mark.id",
            row =>
                (
                    Sitting: row.Whole(0),
                    Place: row.Whole(1),
                    Marker: row.Text(2),
                    Student: row.Text(3),
                    Levels: (IReadOnlyList<int>)[.. levels[row.Number(5)]],
                    Comment: row.TextOrNull(4)
                ),
            work.Id
        );
        return
        [
            .. marks
                .GroupBy(mark => mark.Sitting)
                .Select(sitting =>
                {
                    var sheets = sitting
                        .GroupBy(mark => (mark.Place, mark.Marker))
                        .ToDictionary(
                            sheet => sheet.Key.Place,
                            sheet => new BenchSheet(
                                sheet.Key.Marker,
                                sheet.Where(mark => mark.Levels.Count > 0).ToDictionary(mark => mark.Student, mark => mark.Levels)
                            )
                            {
                                Comments = sheet
                                    .Where(mark => mark.Comment is not null)
                                    .ToDictionary(mark => mark.Student, mark => mark.Comment!),
                            }
                        );
                    // A second marker whose first left no mark, or none but of students who were erased, is still the second.
                    return new RecordedBench(
                        sitting.Key,
                        new(scale, sheets.GetValueOrDefault(1) ?? NothingSeen, sheets.GetValueOrDefault(2))
                    );
                }),
        ];
    }

    /// <summary>Everything that markers saw of a student, in the order of terms and their works.</summary>
    public static IReadOnlyList<BenchOfStudent> OfStudent(RecordSession session, string student)
    {
        ArgumentNullException.ThrowIfNull(session);
        return session.Query(
            $"""
            SELECT class.name, term.title, work.title, sitting, marker, comment, {ChangeLog.Columns}, bench_mark.id FROM bench_mark
            JOIN bench_sheet ON bench_sheet.id = bench_mark.sheet JOIN work ON work.id = bench_sheet.work JOIN term ON term.id = work.term JOIN class ON class.id = term.class
            JOIN change ON change.id = bench_mark.change WHERE student = $1 ORDER BY term.id, work.place, sitting, bench_sheet.place
            """,
            row => new BenchOfStudent(
                row.Text(0),
                row.Text(1),
                row.Text(2),
                row.Whole(3),
                row.Text(4),
                Named(session, row.Number(11)),
                row.TextOrNull(5),
                ChangeLog.Made(row, 6)
            ),
            student
        );
    }

    private static List<(string, string?)> Named(RecordSession session, long mark) =>
        session.Query(
            """
            SELECT bench_criterion.name, bench_level.name FROM bench_mark_level AS seen JOIN bench_criterion ON bench_criterion.work = seen.work AND bench_criterion.place = criterion
            LEFT JOIN bench_level ON bench_level.work = seen.work AND bench_level.place = level WHERE mark = $1 ORDER BY criterion
            """,
            row => (row.Text(0), row.TextOrNull(1)),
            mark
        );
}
