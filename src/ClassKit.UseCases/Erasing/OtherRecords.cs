using System.Text;
using ClassKit.Exercises.Cohorts;
using ClassKit.Records.Storage;

namespace ClassKit.UseCases.Erasing;

/// <summary>Records below a teaching folder that are not its own: of another year, or a copy that somebody put there.</summary>
internal static class OtherRecords
{
    /// <summary>SQLite's file format, 1.3: with these bytes every database begins.</summary>
    private static readonly byte[] Begins = [.. "SQLite format 3"u8, 0];

    /// <summary>Read into memory at most: a record of five years takes half of it.</summary>
    private const long MostBytes = 1L << 30;

    /// <summary>True of a database that is not the folder's own record nor one of its copies.</summary>
    /// <param name="record">The folder's own record.</param>
    /// <param name="file">A file below it.</param>
    public static bool IsOne(string record, string file)
    {
        var own = Path.GetFullPath(record);
        return file != own && IsDatabase(file) && !Backups.Of(own).Select(Path.GetFullPath).Contains(file);
    }

    private static bool IsDatabase(string file)
    {
        try
        {
            using var stream = File.OpenRead(file);
            var first = new byte[Begins.Length];
            return stream.ReadAtLeast(first, first.Length, throwOnEndOfStream: false) == first.Length
                && first.AsSpan().SequenceEqual(Begins);
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            return false;
        }
    }

    /// <summary>
    /// Whether the student's id, name or address stands in a database's bytes, where texts lie as they are; null if it cannot be read. An id
    /// that is a bare number says nothing there.
    /// </summary>
    public static bool? Names(string file, Student who)
    {
        try
        {
            if (new FileInfo(file).Length > MostBytes)
                return null;
            var bytes = File.ReadAllBytes(file);
            return new[] { who.Id, who.Name, who.Email }
                .OfType<string>()
                .Where(word => word.Length > 0 && !word.All(char.IsAsciiDigit))
                .Any(word => bytes.AsSpan().IndexOf(Encoding.UTF8.GetBytes(word)) >= 0);
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            return null;
        }
    }
}
