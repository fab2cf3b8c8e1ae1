namespace ClassKit.UseCases;

/// <summary>Something to be added at the end of a file of the instructor's, of which no byte changes otherwise.</summary>
/// <param name="File">The file; made if it is not there.</param>
/// <param name="Bytes">What is added.</param>
public sealed record Addition(string File, byte[] Bytes)
{
    /// <summary>Adds it, or nothing of it.</summary>
    internal void Write()
    {
        using var stream = new FileStream(File, FileMode.Append, FileAccess.Write, FileShare.None, bufferSize: 0);
        var before = stream.Length;
        try
        {
            stream.Write(Bytes);
            stream.Flush(flushToDisk: true);
        }
        catch (IOException)
        {
            stream.SetLength(before);
            throw;
        }
    }
}
