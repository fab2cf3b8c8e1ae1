using System.Globalization;
using Microsoft.Data.Sqlite;

namespace ClassKit.Records.Storage;

/// <summary>Copies of a record, made by the database itself, so that they are whole even while somebody writes.</summary>
public static class Backups
{
    /// <summary>The folder beside the record that they lie in.</summary>
    public const string Folder = "record-backups";

    /// <summary>The backups of a record, the oldest first.</summary>
    public static IReadOnlyList<string> Of(string record)
    {
        var folder = Beside(record);
        return Directory.Exists(folder)
            ? [.. Directory.EnumerateFiles(folder, Name(record) + "-*.sqlite").Order(StringComparer.Ordinal)]
            : [];
    }

    internal static string Make(SqliteConnection connection, string record, DateTimeOffset now)
    {
        var moment = now.ToString("yyyy-MM-dd'T'HHmmss", CultureInfo.InvariantCulture);
        Directory.CreateDirectory(Beside(record));
        var path = Enumerable
            .Range(1, int.MaxValue)
            .Select(number => Path.Combine(Beside(record), $"{Name(record)}-{moment}{(number == 1 ? "" : "-" + number)}.sqlite"))
            .First(free => !File.Exists(free));
        Copy(connection, path);
        return path;
    }

    /// <summary>Copies a record, reads the copy through, and only then gives it its name.</summary>
    internal static void Copy(SqliteConnection connection, string path)
    {
        var unfinished = path + ".unfinished";
        File.Delete(unfinished);
        using (var copy = Opening.Connect(unfinished))
        {
            connection.BackupDatabase(copy);
            Opening.Check(copy, path, "integrity_check");
            // One file, and none beside it.
            Opening.Run(copy, "PRAGMA journal_mode = DELETE");
        }
        using (var whole = new FileStream(unfinished, FileMode.Open, FileAccess.ReadWrite))
            whole.Flush(flushToDisk: true);
        File.Move(unfinished, path);
    }

    private static string Beside(string record) => Path.Combine(Path.GetDirectoryName(Path.GetFullPath(record))!, Folder);

    private static string Name(string record) => Path.GetFileNameWithoutExtension(record);
}
