using System.Globalization;

namespace ClassKit.Records.Storage;

/// <summary>Remembers beside a large file that it was whole when it was last left, so that opening it need not read it all.</summary>
internal static class CheckStamp
{
    /// <summary>Up to so many bytes a file is read through whenever it is opened: that takes no time that anybody notices.</summary>
    private const long ReadThrough = 8 << 20;

    /// <summary>True if the file is as it was left, or so large that only its stamp is asked.</summary>
    public static bool Holds(string path)
    {
        var file = new FileInfo(path);
        return file.Length > ReadThrough && Read(path) == Of(file);
    }

    /// <summary>Stamps a file that nobody has open any more; one that somebody has open is not, and is read through next time.</summary>
    public static void Set(string path)
    {
        try
        {
            var file = new FileInfo(path);
            if (!file.Exists || file.Length <= ReadThrough || File.Exists(path + "-wal"))
                File.Delete(Beside(path));
            else
                File.WriteAllText(Beside(path), Of(file));
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            // What was written is on record all the same. A stamp that is missing or another's does not hold: the file is read through.
        }
    }

    /// <summary>Takes the stamp of a file away that is no longer there.</summary>
    public static void Remove(string path)
    {
        try
        {
            File.Delete(Beside(path));
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            // It says nothing of a file that is not there.
        }
    }

    private static string? Read(string path)
    {
        try
        {
            return File.Exists(Beside(path)) ? File.ReadAllText(Beside(path)) : null;
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            return null;
        }
    }

    private static string Beside(string path) => path + "-whole";

    private static string Of(FileInfo file) => string.Create(CultureInfo.InvariantCulture, $"{file.Length} {file.LastWriteTimeUtc.Ticks}");
}
