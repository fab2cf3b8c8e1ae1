namespace ClassKit.Records.Storage;

/// <summary>The word that whoever writes leaves beside the record, for others who want to.</summary>
/// <remarks>
/// Only whoever holds the database's own lock writes it, and it is read only while somebody holds it; what is left of a process that was
/// ended means nothing.
/// </remarks>
internal static class WriterWord
{
    private const int Longest = 500;

    public static void Leave(string path, Change change)
    {
        try
        {
            File.WriteAllText(Beside(path), $"{change.Who}: {change.What} {change.About}");
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            // A courtesy to others: writing goes on without it.
        }
    }

    public static void TakeBack(string path)
    {
        try
        {
            File.Delete(Beside(path));
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            // The same.
        }
    }

    public static string? Read(string path)
    {
        try
        {
            return File.ReadAllText(Beside(path)).Trim() is { Length: > 0 and <= Longest } word ? word : null;
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            return null;
        }
    }

    private static string Beside(string path) => path + "-writer";
}
