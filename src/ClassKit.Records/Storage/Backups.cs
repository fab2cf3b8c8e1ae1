using System.Globalization;
using Microsoft.Data.Sqlite;

namespace ClassKit.Records.Storage;

/// <summary>Copies of a record, made by the database itself, so that they are whole even while somebody writes.</summary>
public static class Backups
{
    /// <summary>The folder beside the record that they lie in.</summary>
    public const string Folder = "record-backups";

    private const string MomentFormat = "yyyy-MM-dd'T'HHmmss";

    /// <summary>The backups of a record, the oldest first.</summary>
    public static IReadOnlyList<string> Of(string record)
    {
        var folder = Beside(record);
        return Directory.Exists(folder)
            ?
            [
                .. Directory
                    .EnumerateFiles(folder, Name(record) + "-*.sqlite")
                    .Select(path => (Path: path, Made: MadeOf(record, path)))
                    .Where(backup => backup.Made is not null)
                    .OrderBy(backup => backup.Made)
                    .Select(backup => backup.Path),
            ]
            : [];
    }

    internal static string Make(SqliteConnection connection, string record, DateTimeOffset now)
    {
        var moment = now.ToString(MomentFormat, CultureInfo.InvariantCulture);
        Directory.CreateDirectory(Beside(record));
        var path = Enumerable
            .Range(1, int.MaxValue)
            .Select(number => Path.Combine(Beside(record), $"{Name(record)}-{moment}{(number == 1 ? "" : "-" + number)}.sqlite"))
            .First(free => !File.Exists(free));
        Copy(connection, path);
        return path;
    }

    /// <summary>
    /// When a copy was made and which of that second it is, as its name says; null for a file that is no copy of this record, such as one
    /// of another record whose name begins alike.
    /// </summary>
    private static (DateTime Moment, int Number)? MadeOf(string record, string path)
    {
        var said = Path.GetFileNameWithoutExtension(path.AsSpan())[(Name(record).Length + 1)..];
        var length = MomentFormat.Length - "''".Length;
        if (
            said.Length < length
            || !DateTime.TryParseExact(said[..length], MomentFormat, CultureInfo.InvariantCulture, DateTimeStyles.None, out var moment)
        )
            return null;
        var behind = said[length..];
        if (behind.IsEmpty)
            return (moment, 1);
        return behind[0] == '-' && int.TryParse(behind[1..], NumberStyles.None, CultureInfo.InvariantCulture, out var number)
            ? (moment, number)
            : null;
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
