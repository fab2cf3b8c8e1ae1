using ClassKit.Records.Storage;

namespace ClassKit.Records.Changes;

/// <summary>Who changed what, when and why.</summary>
public static class ChangeLog
{
    private const string Changes = "SELECT id, at, who, what, about, why FROM change ";
    private const string Rows = "SELECT of_table, student, before, after FROM changed_row WHERE change = $1 ";

    /// <summary>Every change, the earliest first.</summary>
    public static IReadOnlyList<LoggedChange> Read(RecordSession session)
    {
        ArgumentNullException.ThrowIfNull(session);
        return session.Query(Changes + "ORDER BY id", row => new LoggedChange(Change(row), session.Query(Rows + "ORDER BY id", Changed, row.Number(0))));
    }

    /// <summary>Every change by which something of a student's was changed or taken away, with those rows alone.</summary>
    public static IReadOnlyList<LoggedChange> OfStudent(RecordSession session, string student)
    {
        ArgumentNullException.ThrowIfNull(session);
        return session.Query(
            Changes + "WHERE id IN (SELECT change FROM changed_row WHERE student = $1) ORDER BY id",
            row => new LoggedChange(Change(row), session.Query(Rows + "AND student = $2 ORDER BY id", Changed, row.Number(0), student)),
            student);
    }

    private static Change Change(Row row) => new(row.Moment(1), row.Text(2), row.Text(3), row.Text(4), row.Text(5));

    private static ChangedRow Changed(Row row) => new(row.Text(0), row.TextOrNull(1), row.Text(2), row.TextOrNull(3));
}
