using ClassKit.Records.Classes;
using ClassKit.Records.Storage;

namespace ClassKit.Records.Observations;

/// <summary>Lessons that were given, and what their classes measured.</summary>
public static class LessonRegister
{
    /// <summary>Puts on record that a class was given a lesson.</summary>
    public static LessonGiven Put(WritingSession session, RecordedClass named, string lesson, string title, DateOnly day)
    {
        ArgumentNullException.ThrowIfNull(session);
        ArgumentNullException.ThrowIfNull(named);
        session.Run(
            "INSERT INTO lesson_given (class, lesson, title, day) VALUES ($1, $2, $3, $4) ON CONFLICT DO UPDATE SET title = $3",
            named.Id,
            lesson,
            title,
            day
        );
        return new(
            session.Number("SELECT id FROM lesson_given WHERE class = $1 AND lesson = $2 AND day = $3", named.Id, lesson, day)!.Value,
            named,
            lesson,
            title,
            day
        );
    }

    /// <summary>The lessons that a class was given, the earliest first.</summary>
    public static IReadOnlyList<LessonGiven> Of(RecordSession session, RecordedClass named)
    {
        ArgumentNullException.ThrowIfNull(session);
        ArgumentNullException.ThrowIfNull(named);
        return session.Query(
            "SELECT id, lesson, title, day FROM lesson_given WHERE class = $1 ORDER BY day, id",
            row => new LessonGiven(row.Number(0), named, row.Text(1), row.Text(2), row.Day(3)),
            named.Id
        );
    }

    /// <summary>Puts a measurement on record in place of the one that is there.</summary>
    public static void Put(WritingSession session, LessonGiven given, Observation observation)
    {
        ArgumentNullException.ThrowIfNull(session);
        ArgumentNullException.ThrowIfNull(given);
        ArgumentNullException.ThrowIfNull(observation);
        session.Run(
            """
            INSERT INTO observation (lesson_given, team, bread, measured, unit, value, remark, change) VALUES ($1, $2, $3, $4, $5, $6, $7, $8)
            ON CONFLICT DO UPDATE SET unit = $5, value = $6, remark = $7, change = $8 WHERE (unit, value, remark) IS NOT ($5, $6, $7)
            """,
            given.Id,
            observation.Team,
            observation.Bread,
            observation.Measured,
            observation.Unit,
            observation.Value,
            Values.OrNull(observation.Remark),
            session.ChangeId
        );
    }

    /// <summary>What was measured in a lesson, in the order in which it came.</summary>
    public static IReadOnlyList<Observation> Observations(RecordSession session, LessonGiven given)
    {
        ArgumentNullException.ThrowIfNull(session);
        ArgumentNullException.ThrowIfNull(given);
        return session.Query(
            "SELECT team, bread, measured, value, unit, remark FROM observation WHERE lesson_given = $1 ORDER BY id",
            row => new Observation(row.Text(0), row.Text(1), row.Text(2), row.Points(3), row.Text(4), row.TextOrNull(5)),
            given.Id
        );
    }
}
