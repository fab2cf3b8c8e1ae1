using ClassKit.Content.Diagnostics;
using ClassKit.Records.Storage;

namespace ClassKit.UseCases.Recording;

/// <summary>Where a record lies: a file, or a teaching folder that holds it or says where it is kept.</summary>
public static class RecordPlace
{
    /// <summary>In a teaching folder whose record is kept elsewhere: the first line is its path.</summary>
    public const string KeptElsewhere = "record-is-kept-in.txt";

    /// <summary>The file that a path means.</summary>
    public static string Of(string path)
    {
        // A folder whose name was typed wrong is no place to begin a record of that name in.
        if (!Directory.Exists(path) && !File.Exists(path) && Path.GetExtension(path).Length == 0)
            return Path.Combine(path, TeachingRecord.FileName);
        if (!Directory.Exists(path))
            return path;
        var elsewhere = Path.Combine(path, KeptElsewhere);
        return File.Exists(elsewhere) && File.ReadLines(elsewhere).FirstOrDefault()?.Trim() is { Length: > 0 } kept
            ? Path.GetFullPath(kept, Path.GetFullPath(path))
            : Path.Combine(path, TeachingRecord.FileName);
    }

    /// <summary>The teaching folder that a path means: itself, or the one in which the file lies.</summary>
    public static string FolderOf(string path) =>
        Directory.Exists(path) ? Path.GetFullPath(path) : Path.GetDirectoryName(Path.GetFullPath(path))!;

    /// <summary>The record there, opened, or what is wrong with it.</summary>
    /// <param name="path">A file or a teaching folder.</param>
    /// <param name="now">When, for the name of a backup that a newer program makes before it changes tables.</param>
    /// <param name="mayBegin">True if one begins where there is none.</param>
    public static Reading<TeachingRecord> Open(string path, DateTimeOffset now, bool mayBegin) =>
        RecordTroubles.Told(() => new Reading<TeachingRecord>(TeachingRecord.Open(Of(path), now, mayBegin), []));
}
