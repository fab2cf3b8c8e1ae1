using ClassKit.Records.Storage;

namespace ClassKit.Records.Changes;

/// <summary>Who changed what, when and why.</summary>
public static class ChangeLog
{
    /// <summary>What <see cref="Made"/> reads of a change that a row is joined to.</summary>
    internal const string Columns = "change.at, change.who, change.what, change.about, change.why";

    private const string Changes = $"SELECT id, {Columns} FROM change ";
    private const string Rows = "SELECT of_table, student, before, after FROM changed_row WHERE change = $1 ";

    /// <summary>Every change, the earliest first.</summary>
    public static IReadOnlyList<LoggedChange> Read(RecordSession session)
    {
        ArgumentNullException.ThrowIfNull(session);
        return session.Query(Changes + "ORDER BY id", row => new LoggedChange(
            Made(row, 1),
            session.Query(Rows + "ORDER BY id", Changed, row.Number(0))
        ));
    }

    /// <summary>Every change by which something of a student's was changed or taken away, with those rows alone.</summary>
    public static IReadOnlyList<LoggedChange> OfStudent(RecordSession session, string student)
    {
        ArgumentNullException.ThrowIfNull(session);
        return session.Query(
            Changes + "WHERE id IN (SELECT change FROM changed_row WHERE student = $1) ORDER BY id",
            row => new LoggedChange(Made(row, 1), session.Query(Rows + "AND student = $2 ORDER BY id", Changed, row.Number(0), student)),
            student
        );
    }

    /// <summary>The change whose <see cref="Columns"/> begin at a column.</summary>
    internal static Change Made(Row row, int at) =>
        new(row.Moment(at), row.Text(at + 1), row.Text(at + 2), row.Text(at + 3), row.Text(at + 4));

    private static ChangedRow Changed(Row row) => new(row.Text(0), row.TextOrNull(1), row.Text(2), row.TextOrNull(3));
}
