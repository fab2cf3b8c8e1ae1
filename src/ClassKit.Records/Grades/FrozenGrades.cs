using ClassKit.Records.Changes;
using ClassKit.Records.Storage;
using ClassKit.Records.Terms;

namespace ClassKit.Records.Grades;

/// <summary>Grades as they were given out. A later change adds a number; what was given out before stays on record.</summary>
public static class FrozenGrades
{
    private const string Columns = "frozen_grade.id, student, grade, percent, rounded, provisional";

    /// <summary>Puts grades on record as given out.</summary>
    /// <returns>1 for the first time, 2 for a change, and so on.</returns>
    public static int Put(WritingSession session, RecordedTerm term, IReadOnlyList<FrozenGrade> grades)
    {
        ArgumentNullException.ThrowIfNull(session);
        ArgumentNullException.ThrowIfNull(term);
        ArgumentNullException.ThrowIfNull(grades);
        var number = Latest(session, term) + 1;
        foreach (var grade in grades)
        {
            var id = session.Insert(
                "INSERT INTO frozen_grade (term, number, student, grade, percent, rounded, provisional, change) VALUES ($1, $2, $3, $4, $5, $6, $7, $8)",
                term.Id,
                number,
                grade.Student,
                Values.OrNull(grade.Grade),
                grade.Percent,
                grade.Rounded,
                grade.IsProvisional,
                session.ChangeId
            );
            foreach (var (place, work) in grade.Works.Index())
                session.Run(
                    "INSERT INTO frozen_work (frozen, place, title, standing, share) VALUES ($1, $2, $3, $4, $5)",
                    id,
                    place,
                    work.Title,
                    work.Standing,
                    work.Share
                );
        }
        return number;
    }

    /// <summary>The grades that stand as given out; none where none were. Those of erased students are not among them.</summary>
    public static IReadOnlyList<FrozenGrade> Of(RecordSession session, RecordedTerm term)
    {
        ArgumentNullException.ThrowIfNull(session);
        ArgumentNullException.ThrowIfNull(term);
        return session.Query(
            $"SELECT {Columns} FROM frozen_grade WHERE term = $1 AND number = $2 AND student IS NOT NULL ORDER BY id",
            row => Grade(session, row),
            term.Id,
            Latest(session, term)
        );
    }

    /// <summary>Every grade that was ever given out to a student, by term and time.</summary>
    public static IReadOnlyList<GradeGivenOut> OfStudent(RecordSession session, string student)
    {
        ArgumentNullException.ThrowIfNull(session);
        return session.Query(
            $"""
            SELECT {Columns}, class.name, term.title, number, {ChangeLog.Columns} FROM frozen_grade
            JOIN term ON term.id = frozen_grade.term JOIN class ON class.id = term.class JOIN change ON change.id = frozen_grade.change WHERE student = $1 ORDER BY term.id, number
            """,
            row => new GradeGivenOut(row.Text(6), row.Text(7), row.Whole(8), Grade(session, row), ChangeLog.Made(row, 9)),
            student
        );
    }

    /// <summary>Which time they were given out last, and when; null where they never were.</summary>
    public static (int Number, DateTimeOffset At)? Last(RecordSession session, RecordedTerm term)
    {
        ArgumentNullException.ThrowIfNull(session);
        ArgumentNullException.ThrowIfNull(term);
        return
            session.Query(
                "SELECT number, at FROM frozen_grade JOIN change ON change.id = frozen_grade.change WHERE term = $1 ORDER BY number DESC LIMIT 1",
                row => ((int)row.Number(0), row.Moment(1)),
                term.Id
            )
                is [var last]
            ? last
            : null;
    }

    private static FrozenGrade Grade(RecordSession session, Row row) =>
        new(
            row.Text(1),
            row.TextOrNull(2),
            row.PointsOrNull(3),
            row.PointsOrNull(4),
            row.Number(5) == 1,
            session.Query(
                "SELECT title, standing, share FROM frozen_work WHERE frozen = $1 ORDER BY place",
                work => new FrozenWork(work.Text(0), work.Text(1), work.PointsOrNull(2)),
                row.Number(0)
            )
        );

    private static int Latest(RecordSession session, RecordedTerm term) =>
        (int)(session.Number("SELECT max(number) FROM frozen_grade WHERE term = $1", term.Id) ?? 0);
}
