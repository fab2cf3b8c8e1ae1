using ClassKit.Records.Changes;
using ClassKit.Records.Storage;
using ClassKit.Records.Terms;
using ClassKit.Terms.Marks;

namespace ClassKit.Records.Marks;

/// <summary>Marks that somebody typed: points, or that a student was absent, excused, or not due yet.</summary>
public static class TypedMarks
{
    /// <summary>Puts a mark on record in place of the one that is there.</summary>
    public static void Put(WritingSession session, RecordedWork work, Attempt attempt)
    {
        ArgumentNullException.ThrowIfNull(session);
        ArgumentNullException.ThrowIfNull(work);
        ArgumentNullException.ThrowIfNull(attempt);
        var mark = attempt.Mark;
        decimal? points = mark.State == MarkState.Marked ? mark.Points : null,
            outOf = mark.State == MarkState.Marked ? mark.OutOf : null;
        session.Run(
            """
            INSERT INTO typed_mark (work, sitting, student, state, points, out_of, lateness, change) VALUES ($1, $2, $3, $4, $5, $6, $7, $8)
            ON CONFLICT DO UPDATE SET state = $4, points = $5, out_of = $6, lateness = $7, change = $8
            WHERE (state, points, out_of, lateness) IS NOT ($4, $5, $6, $7)
            """,
            work.Id,
            attempt.Sitting,
            attempt.Student,
            Words.Of(mark.State),
            points,
            outOf,
            Words.Of(mark.Lateness),
            session.ChangeId
        );
    }

    /// <summary>Takes a mark away.</summary>
    /// <returns>False if there is none.</returns>
    public static bool TakeAway(WritingSession session, RecordedWork work, string student, int sitting)
    {
        ArgumentNullException.ThrowIfNull(session);
        ArgumentNullException.ThrowIfNull(work);
        return session.Run("DELETE FROM typed_mark WHERE work = $1 AND student = $2 AND sitting = $3", work.Id, student, sitting) > 0;
    }

    /// <summary>The marks of a work, by sitting and student. Those of erased students are not among them.</summary>
    public static IReadOnlyList<Attempt> Of(RecordSession session, RecordedWork work)
    {
        ArgumentNullException.ThrowIfNull(session);
        ArgumentNullException.ThrowIfNull(work);
        return session.Query(
            "SELECT student, sitting, state, points, out_of, lateness FROM typed_mark WHERE work = $1 AND student IS NOT NULL ORDER BY sitting, student",
            row => new Attempt(row.Text(0), work.Assignment.Id, row.Whole(1), Mark(row)),
            work.Id
        );
    }

    /// <summary>Every typed mark of a student, in the order of terms and their works.</summary>
    public static IReadOnlyList<MarkOfStudent> OfStudent(RecordSession session, string student)
    {
        ArgumentNullException.ThrowIfNull(session);
        return session.Query(
            $"""
            SELECT typed_mark.student, typed_mark.sitting, state, points, typed_mark.out_of, lateness, work.title, term.title, class.name, {ChangeLog.Columns} FROM typed_mark
            JOIN work ON work.id = typed_mark.work JOIN term ON term.id = work.term JOIN class ON class.id = term.class JOIN change ON change.id = typed_mark.change
            WHERE typed_mark.student = $1 ORDER BY term.id, work.place, typed_mark.sitting
            """,
            row => new MarkOfStudent(
                row.Text(8),
                row.Text(7),
                new(row.Text(0), row.Text(6), row.Whole(1), Mark(row)),
                ChangeLog.Made(row, 9)
            ),
            student
        );
    }

    private static Mark Mark(Row row) =>
        Words.Find<MarkState>(row.Text(2)) switch
        {
            MarkState.Absent => ClassKit.Terms.Marks.Mark.Absent,
            MarkState.Excused => ClassKit.Terms.Marks.Mark.Excused,
            MarkState.NotDue => ClassKit.Terms.Marks.Mark.NotDue,
            MarkState.Marked => ClassKit.Terms.Marks.Mark.Of(row.Points(3), row.Points(4)) with
            {
                Lateness = Words.Find<Lateness>(row.Text(5)),
            },
        };
}
