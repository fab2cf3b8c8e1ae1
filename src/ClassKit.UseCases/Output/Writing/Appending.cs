namespace ClassKit.UseCases.Output.Writing;

/// <summary>Adds to files of the instructor's.</summary>
internal static class Appending
{
    /// <summary>Adds what is to be added, or nothing of it.</summary>
    /// <returns>Takes it back.</returns>
    public static Action Write(Addition addition)
    {
        var isNew = Place.At(addition.File) == Standing.Nothing;
        using var stream = new FileStream(addition.File, FileMode.Append, FileAccess.Write, FileShare.None, bufferSize: 0);
        var before = stream.Length;
        try
        {
            stream.Write(addition.Bytes);
            stream.Flush(flushToDisk: true);
            return () => TakeBack(addition, isNew, before);
        }
        catch (IOException)
        {
            stream.SetLength(before);
            throw;
        }
    }

    private static void TakeBack(Addition addition, bool isNew, long before)
    {
        if (isNew)
        {
            File.Delete(addition.File);
            return;
        }
        using var stream = File.OpenWrite(addition.File);

        // What somebody added after it stays.
        if (stream.Length == before + addition.Bytes.Length)
            stream.SetLength(before);
    }
}
