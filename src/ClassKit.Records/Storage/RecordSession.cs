using Microsoft.Data.Sqlite;

namespace ClassKit.Records.Storage;

/// <summary>One look into the record: all that is read through it is of one moment.</summary>
public class RecordSession : IDisposable
{
    private readonly Dictionary<string, SqliteCommand> _commands = new(StringComparer.Ordinal);

    internal RecordSession(SqliteConnection connection, SqliteTransaction transaction) =>
        (Connection, Transaction) = (connection, transaction);

    internal SqliteConnection Connection { get; }

    internal SqliteTransaction Transaction { get; }

    /// <summary>Every row of an answer.</summary>
    /// <param name="sql">With <c>$1</c>, <c>$2</c> and so on for values.</param>
    /// <param name="make">Makes what is wanted of a row.</param>
    /// <param name="values">In that order.</param>
    internal List<T> Query<T>(string sql, Func<Row, T> make, params ReadOnlySpan<object?> values)
    {
        using var reader = Command(sql, values).ExecuteReader();
        List<T> found = [];
        while (reader.Read())
            found.Add(make(new(reader)));
        return found;
    }

    /// <summary>
    /// Every row of an answer, one at a time: for answers that need not fit into memory. No other of the same words may be asked meanwhile.
    /// </summary>
    internal IEnumerable<T> Stream<T>(string sql, Func<Row, T> make)
    {
        using var reader = Command(sql, []).ExecuteReader();
        while (reader.Read())
            yield return make(new(reader));
    }

    /// <summary>The only row of an answer, or null.</summary>
    internal T? One<T>(string sql, Func<Row, T> make, params ReadOnlySpan<object?> values)
        where T : class => Query(sql, make, values) is [var one, ..] ? one : null;

    /// <summary>The only number of an answer, or null.</summary>
    internal long? Number(string sql, params ReadOnlySpan<object?> values) =>
        Command(sql, values).ExecuteScalar() is long number ? number : null;

    /// <summary>A statement, prepared once a session.</summary>
    internal SqliteCommand Command(string sql, ReadOnlySpan<object?> values)
    {
        if (!_commands.TryGetValue(sql, out var command))
        {
            _commands[sql] = command = Connection.CreateCommand();
            command.CommandText = sql;
            command.Transaction = Transaction;
        }
        command.Parameters.Clear();
        for (var at = 0; at < values.Length; at++)
            command.Parameters.AddWithValue($"${at + 1}", Values.Stored(values[at]));
        return command;
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        foreach (var command in _commands.Values)
            command.Dispose();
        Transaction.Dispose();
        GC.SuppressFinalize(this);
    }
}
