using Microsoft.Data.Sqlite;

namespace ClassKit.Records.Storage;

/// <summary>What an error of the database or the system comes to. Numbers: SQLite, Result and Error Codes.</summary>
internal static class Faults
{
    private const int Perm = 3,
        Busy = 5,
        Locked = 6,
        ReadOnly = 8,
        InputOutput = 10,
        Corrupt = 11,
        Full = 13,
        CanNotOpen = 14,
        NotADatabase = 26;

    /// <summary>
    /// SQLITE_IOERR_SHMSIZE: the file beside the record that writers share cannot grow, which "may indicate that the underlying filesystem
    /// volume is out of space".
    /// </summary>
    private const int CanNotShare = 4874;

    /// <summary>
    /// Works through the database, and tells in facts what went wrong with the file. Errors of files that a caller's own work reads or
    /// writes meanwhile are the caller's, and pass.
    /// </summary>
    /// <exception cref="RecordException">The database could not do it.</exception>
    public static T OfDatabase<T>(string path, Func<T> work)
    {
        try
        {
            return work();
        }
        catch (SqliteException failure) when (Of(path, failure) is { } trouble)
        {
            throw new RecordException(path, trouble, failure);
        }
    }

    /// <summary>The same, where files are touched as well, and no work of a caller's is in it.</summary>
    /// <exception cref="RecordException">Something went wrong.</exception>
    public static T Told<T>(string path, Func<T> work)
    {
        try
        {
            return OfDatabase(path, work);
        }
        catch (IOException failure) when (IsFull(failure))
        {
            throw new RecordException(path, new RecordTrouble.Full(), failure);
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            throw new RecordException(path, new RecordTrouble.Unreachable(failure.Message), failure);
        }
    }

    /// <summary>What an error of the database says about the file; null for one that is a mistake of ours.</summary>
    public static RecordTrouble? Of(string path, SqliteException failure) =>
        failure.SqliteErrorCode switch
        {
            Busy or Locked => new RecordTrouble.Busy(WriterWord.Read(path)),
            Full => new RecordTrouble.Full(),
            InputOutput when failure.SqliteExtendedErrorCode == CanNotShare => new RecordTrouble.Full(),
            Corrupt or NotADatabase => new RecordTrouble.Damaged(failure.Message),
            Perm or ReadOnly or InputOutput or CanNotOpen => new RecordTrouble.Unreachable(failure.Message),
            _ => null,
        };

    /// <summary>ENOSPC, and ERROR_DISK_FULL on Windows.</summary>
    private static bool IsFull(IOException failure) => (failure.HResult & 0xFFFF) is 28 or 112;
}
