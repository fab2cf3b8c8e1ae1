using Microsoft.Data.Sqlite;

namespace ClassKit.Records.Logging;

/// <summary>
/// Keeps what rows were before they are changed, in whatever is written through a connection: triggers of the database, so that no register
/// can forget to.
/// </summary>
/// <remarks>
/// They are the connection's own (SQLite, CREATE TRIGGER, TEMP triggers on non-TEMP tables) and no part of the file: whoever only reads
/// would take in eighteen triggers first, and that was half of what opening took. What other programs write into the file is not logged.
/// </remarks>
internal static class RowLog
{
    private static readonly Lazy<string> Triggers = new(() =>
        string.Join(";\n", LoggedTable.All.SelectMany(table => table.Triggers())) + ";"
    );

    /// <summary>From now on, until it is closed, the connection logs.</summary>
    public static void Begin(SqliteConnection connection)
    {
        using var command = connection.CreateCommand();
        command.CommandText = Triggers.Value;
        command.ExecuteNonQuery();
    }
}
