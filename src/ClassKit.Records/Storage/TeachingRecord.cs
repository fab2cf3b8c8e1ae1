using ClassKit.Records.Logging;
using Microsoft.Data.Sqlite;

namespace ClassKit.Records.Storage;

/// <summary>The record of an instructor's teaching: one SQLite file, or one in memory.</summary>
/// <remarks>
/// One thread at a time, and no look within another: whoever works beside others opens one of their own, which costs a millisecond. Every
/// method that touches the file throws a <see cref="RecordException"/> that says in facts what is wrong with it.
/// </remarks>
public sealed class TeachingRecord : IDisposable
{
    /// <summary>What the file is called in a teaching folder.</summary>
    public const string FileName = "record.sqlite";

    private readonly SqliteConnection _connection;
    private bool _hasWritten,
        _logs;

    private TeachingRecord(string path, SqliteConnection connection) => (Path, _connection) = (path, connection);

    /// <summary>Where it lies; empty for one in memory.</summary>
    public string Path { get; }

    /// <summary>A new one in memory.</summary>
    public static TeachingRecord InMemory()
    {
        var record = new TeachingRecord("", Opening.Connect(":memory:"));
        Opening.Migrate(record._connection, _ => { });
        return record;
    }

    /// <summary>Opens a record, checks it, and brings its tables to this version after a backup.</summary>
    /// <param name="path">The file.</param>
    /// <param name="now">When, for the name of a backup.</param>
    /// <param name="mayBegin">True if a new one begins where there is none.</param>
    public static TeachingRecord Open(string path, DateTimeOffset now, bool mayBegin)
    {
        if (!File.Exists(path) && !mayBegin)
            throw new RecordException(path, new RecordTrouble.Missing());
        return Faults.Told(path, () => new TeachingRecord(path, Opening.Open(path, now)));
    }

    /// <summary>Reads what is there at one moment.</summary>
    public T Read<T>(Func<RecordSession, T> read) => Faults.OfDatabase(Path, () =>
        {
            using var session = new RecordSession(_connection, _connection.BeginTransaction(deferred: true));
            return read(session);
        });

    /// <summary>A look that stays open: all that is read through it is of one moment.</summary>
    public RecordSession Look() =>
        Faults.OfDatabase(Path, () => new RecordSession(_connection, _connection.BeginTransaction(deferred: true)));

    /// <summary>
    /// Fills an empty record with rows that bring their own changes with them; nothing is written where something is wrong.
    /// </summary>
    internal T? Fill<T>(Func<RecordSession, T?> fill)
        where T : class => Faults.OfDatabase(Path, () =>
        {
            using var transaction = _connection.BeginTransaction(deferred: false);
            StillHere();
            using var session = new RecordSession(_connection, transaction);
            session.Command("PRAGMA defer_foreign_keys = ON", []).ExecuteNonQuery();
            if (fill(session) is { } fault)
                return fault;
            transaction.Commit();
            _hasWritten = true;
            return null;
        });

    /// <summary>Writes in one transaction, all or nothing.</summary>
    /// <exception cref="RecordException">Also when somebody else has been writing for some seconds, or took it elsewhere meanwhile.</exception>
    public T Write<T>(Change change, Func<WritingSession, T> write) => Faults.OfDatabase(Path, () =>
        {
            if (!_logs)
                RowLog.Begin(_connection);
            _logs = true;
            using var transaction = _connection.BeginTransaction(deferred: false);
            StillHere();
            if (Path.Length > 0)
                WriterWord.Leave(Path, change);
            try
            {
                using var session = new WritingSession(_connection, transaction, change);
                var result = write(session);
                if (session.IsAbandoned)
                    return result;
                transaction.Commit();
                _hasWritten = true;
                return result;
            }
            finally
            {
                if (Path.Length > 0)
                    WriterWord.TakeBack(Path);
            }
        });

    /// <summary>Makes a copy beside the record, by the database itself, and checks it.</summary>
    /// <param name="now">When, for its name.</param>
    /// <returns>Its path.</returns>
    public string BackUp(DateTimeOffset now) => Faults.Told(Path, () => Backups.Make(_connection, Path, now));

    /// <summary>Reads through all of it.</summary>
    /// <exception cref="RecordException">Something is wrong.</exception>
    internal void Verify() => Faults.Told(Path, () => Opening.Check(_connection, Path, "integrity_check"));

    /// <summary>Moves it to another place, where a whole copy stands before the old file goes. The record is closed afterwards.</summary>
    /// <param name="path">A file that does not exist yet.</param>
    /// <param name="pointTo">Makes whoever looks for the record find it there, while both are there and nobody can write: a run that is cut
    /// off at any moment leaves one that is found. What it throws passes; the old file is left then.</param>
    public void MoveTo(string path, Action pointTo) => Faults.OfDatabase(Path, () =>
        {
            Faults.Told(Path, () =>
                File.Exists(path)
                    ? throw new RecordException(path, new RecordTrouble.Occupied())
                    : Directory.CreateDirectory(System.IO.Path.GetDirectoryName(path)!)
            );
            // A copy is not made by a connection that holds the writer's place, so another holds it until both are in order.
            using (var place = Opening.Connect(Path))
            {
                using var held = place.BeginTransaction(deferred: false);
                Faults.Told(Path, () =>
                {
                    Backups.Copy(_connection, path);
                    return true;
                });
                pointTo();
                // Windows lets nobody delete what is open: there whoever waits may come in between.
                if (!OperatingSystem.IsWindows())
                    return Leave();
            }
            return Leave();

            bool Leave() => Faults.Told(Path, () =>
                {
                    _connection.Dispose();
                    CheckStamp.Remove(Path);
                    File.Delete(Path);
                    return true;
                });
        });

    /// <summary>Whoever waited for the writer's place while the record was taken elsewhere has a file that nobody will look at again.</summary>
    private void StillHere()
    {
        if (Path.Length > 0 && !File.Exists(Path))
            throw new RecordException(Path, new RecordTrouble.Missing());
    }

    /// <summary>Takes what was deleted out of the file, so that nothing of it can be found there.</summary>
    /// <returns>Whether that was done. What was deleted is off the record either way.</returns>
    public Scoured Scour() => Faults.OfDatabase(Path, () =>
        {
            _hasWritten = true;
            try
            {
                Opening.Run(_connection, "VACUUM");
                return Opening.IsAllInFile(_connection) ? Scoured.Gone : Scoured.WhenClosed;
            }
            catch (SqliteException failure) when (Faults.Of(Path, failure) is RecordTrouble.Busy)
            {
                return Scoured.OthersWrite;
            }
            catch (SqliteException failure) when (Faults.Of(Path, failure) is RecordTrouble.Full)
            {
                return Scoured.NoRoom;
            }
        });

    /// <summary>Closes the file.</summary>
    public void Dispose()
    {
        _connection.Dispose();
        if (_hasWritten && Path.Length > 0)
            CheckStamp.Set(Path);
    }
}
