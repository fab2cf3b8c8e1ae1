namespace ClassKit.UseCases;

/// <summary>Something to be added at the end of a file of the instructor's, of which no byte changes otherwise.</summary>
/// <param name="File">The file; made if it is not there.</param>
/// <param name="Bytes">What is added.</param>
public sealed record Addition(string File, byte[] Bytes)
{
    /// <summary>Adds it, or nothing of it.</summary>
    /// <returns>Takes it back.</returns>
    internal Action Write()
    {
        var isNew = Place.At(File) == Standing.Nothing;
        using var stream = new FileStream(File, FileMode.Append, FileAccess.Write, FileShare.None, bufferSize: 0);
        var before = stream.Length;
        try
        {
            stream.Write(Bytes);
            stream.Flush(flushToDisk: true);
            return () => TakeBack(isNew, before);
        }
        catch (IOException)
        {
            stream.SetLength(before);
            throw;
        }
    }

    private void TakeBack(bool isNew, long before)
    {
        if (isNew)
        {
            System.IO.File.Delete(File);
            return;
        }
        using var stream = System.IO.File.OpenWrite(File);

        // What somebody added after it stays.
        if (stream.Length == before + Bytes.Length) stream.SetLength(before);
    }
}
