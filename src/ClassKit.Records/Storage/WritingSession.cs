using Microsoft.Data.Sqlite;

namespace ClassKit.Records.Storage;

/// <summary>One transaction: all that is written through it is there afterwards, or nothing.</summary>
public sealed class WritingSession : RecordSession
{
    internal WritingSession(SqliteConnection connection, SqliteTransaction transaction, Change change)
        : base(connection, transaction)
    {
        Change = change;
        ChangeId = Insert(
            "INSERT INTO change (at, who, what, about, why) VALUES ($1, $2, $3, $4, $5)",
            change.At,
            change.Who,
            change.What,
            change.About,
            change.Why
        );
    }

    /// <summary>Who writes, when and why.</summary>
    public Change Change { get; }

    /// <summary>True after <see cref="Abandon"/>.</summary>
    internal bool IsAbandoned { get; private set; }

    /// <summary>The row of the change.</summary>
    internal long ChangeId { get; }

    /// <summary>
    /// Leaves everything as it was when the session ends: there was nothing to do, or it was only to be seen what it would come to.
    /// </summary>
    public void Abandon() => IsAbandoned = true;

    /// <summary>Runs a statement.</summary>
    /// <returns>How many rows it changed.</returns>
    internal int Run(string sql, params ReadOnlySpan<object?> values) => Command(sql, values).ExecuteNonQuery();

    /// <summary>Adds a row.</summary>
    /// <returns>Its number.</returns>
    internal long Insert(string sql, params ReadOnlySpan<object?> values)
    {
        Run(sql, values);
        return SQLitePCL.raw.sqlite3_last_insert_rowid(Connection.Handle);
    }
}
