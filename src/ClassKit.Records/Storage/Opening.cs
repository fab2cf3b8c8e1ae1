using System.Globalization;
using Microsoft.Data.Sqlite;

namespace ClassKit.Records.Storage;

/// <summary>Opens the file: looks at its beginning, reads it through, and brings it to this version.</summary>
internal static class Opening
{
    /// <summary>How many seconds somebody who writes is waited for.</summary>
    private const int Patience = 5;

    /// <summary>SQLITE_ERROR: where tables that we made cannot be asked, something wrote over them.</summary>
    private const int UnsaidError = 1;

    public static SqliteConnection Open(string path, DateTimeOffset now)
    {
        if (File.Exists(path) && RecordHeader.Trouble(path) is { } trouble)
            throw new RecordException(path, trouble);
        var connection = Connect(path);
        try
        {
            if (!CheckStamp.Holds(path))
                Check(connection, path, "quick_check");
            if (Version(connection) == 0 && HasTablesOfOthers(connection))
                throw new RecordException(path, new RecordTrouble.Foreign());
            Run(connection, "PRAGMA journal_mode = WAL");
            Migrate(connection, version =>
            {
                if (version > 0)
                    Backups.Make(connection, path, now);
            });
            return connection;
        }
        catch (SqliteException failure) when (failure.SqliteErrorCode == UnsaidError)
        {
            connection.Dispose();
            throw new RecordException(path, new RecordTrouble.Damaged(failure.Message), failure);
        }
        catch
        {
            connection.Dispose();
            throw;
        }
    }

    public static SqliteConnection Connect(string path)
    {
        var connection = new SqliteConnection(
            new SqliteConnectionStringBuilder
            {
                DataSource = path,
                Pooling = false,
                ForeignKeys = true,
                DefaultTimeout = Patience,
            }.ConnectionString
        );
        try
        {
            connection.Open();
            // Nothing committed is lost when the power goes; nothing erased stays in free pages; a scribbled page or schema is not trusted.
            Run(
                connection,
                "PRAGMA synchronous = FULL; PRAGMA secure_delete = ON; PRAGMA cell_size_check = ON; PRAGMA trusted_schema = OFF"
            );
            return connection;
        }
        catch
        {
            connection.Dispose();
            throw;
        }
    }

    /// <summary>Brings the tables to this version, each step in a transaction.</summary>
    /// <param name="connection">The database.</param>
    /// <param name="before">Done first where there is a step to take, with the version that is there.</param>
    public static void Migrate(SqliteConnection connection, Action<int> before)
    {
        if (Version(connection) >= Migrations.Latest)
            return;
        before(Version(connection));
        using var transaction = connection.BeginTransaction(deferred: false);
        // Somebody else may have come first while we waited.
        foreach (var (version, sql) in Migrations.After(Version(connection)))
        {
            Run(connection, sql, transaction);
            Run(connection, $"PRAGMA user_version = {version}", transaction);
        }
        Run(connection, $"PRAGMA application_id = {RecordHeader.ApplicationId}", transaction);
        transaction.Commit();
    }

    /// <summary>
    /// Puts all that was written into the file itself, and waits for whoever reads. A checkpoint that is held back is no error to the
    /// database: the first column of its row says so.
    /// </summary>
    /// <returns>False if somebody held it back.</returns>
    public static bool IsAllInFile(SqliteConnection connection)
    {
        Run(connection, string.Create(CultureInfo.InvariantCulture, $"PRAGMA busy_timeout = {Patience * 1000}"));
        try
        {
            return Number(connection, "PRAGMA wal_checkpoint(TRUNCATE)") == 0;
        }
        finally
        {
            // Everywhere else it is the connection's own commands that wait.
            Run(connection, "PRAGMA busy_timeout = 0");
        }
    }

    public static bool Check(SqliteConnection connection, string path, string check)
    {
        using var command = connection.CreateCommand();
        command.CommandText = $"PRAGMA {check}(1)";
        return command.ExecuteScalar() is "ok"
            ? true
            : throw new RecordException(path, new RecordTrouble.Damaged((string?)command.ExecuteScalar() ?? check));
    }

    public static void Run(SqliteConnection connection, string sql, SqliteTransaction? transaction = null)
    {
        using var command = connection.CreateCommand();
        command.CommandText = sql;
        command.Transaction = transaction;
        command.ExecuteNonQuery();
    }

    /// <summary>
    /// True if there are tables that no version of ours made; asked in one breath, for somebody else may be beginning this very record.
    /// </summary>
    private static bool HasTablesOfOthers(SqliteConnection connection) =>
        Number(connection, "SELECT count(*) FROM sqlite_schema WHERE (SELECT user_version FROM pragma_user_version) = 0") > 0;

    private static int Version(SqliteConnection connection) => (int)Number(connection, "PRAGMA user_version");

    private static long Number(SqliteConnection connection, string sql)
    {
        using var command = connection.CreateCommand();
        command.CommandText = sql;
        return (long)command.ExecuteScalar()!;
    }
}
