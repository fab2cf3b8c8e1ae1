using ClassKit.Records.Classes;
using ClassKit.Records.Storage;

namespace ClassKit.Records.Arrangements;

/// <summary>What was arranged with students, and from when to when.</summary>
public static class ArrangementRegister
{
    private const string All =
        "SELECT class.id, class.name, student, what, since, until FROM arrangement JOIN class ON class.id = arrangement.class ";

    /// <summary>
    /// Puts on record what holds for the students of a class from a day on: what is new begins, and what is no longer there ends.
    /// </summary>
    /// <param name="session">Writes.</param>
    /// <param name="named">The class.</param>
    /// <param name="arranged">Everything that is arranged now, by student.</param>
    /// <param name="today">The day.</param>
    public static void Put(
        WritingSession session,
        RecordedClass named,
        IReadOnlyList<(string Student, string What)> arranged,
        DateOnly today
    )
    {
        ArgumentNullException.ThrowIfNull(session);
        ArgumentNullException.ThrowIfNull(named);
        ArgumentNullException.ThrowIfNull(arranged);
        var held = session
            .Query(All + "WHERE class.id = $1 AND until IS NULL", Arrangement, named.Id)
            .Select(one => (one.Student, one.What))
            .ToList();
        foreach (var (student, what) in held.Except(arranged))
            session.Run(
                "UPDATE arrangement SET until = max(since, $4) WHERE class = $1 AND student = $2 AND what = $3 AND until IS NULL",
                named.Id,
                student,
                what,
                today
            );
        foreach (var (student, what) in arranged.Except(held))
            session.Run(
                "INSERT INTO arrangement (class, student, since, what, change) VALUES ($1, $2, $3, $4, $5)",
                named.Id,
                student,
                today,
                what,
                session.ChangeId
            );
    }

    /// <summary>What was ever arranged with a student, the earliest first.</summary>
    public static IReadOnlyList<RecordedArrangement> OfStudent(RecordSession session, string student)
    {
        ArgumentNullException.ThrowIfNull(session);
        return session.Query(All + "WHERE student = $1 ORDER BY since, arrangement.id", Arrangement, student);
    }

    private static RecordedArrangement Arrangement(Row row) =>
        new(new(row.Number(0), row.Text(1)), row.Text(2), row.Text(3), row.Day(4), row.DayOrNull(5));
}
