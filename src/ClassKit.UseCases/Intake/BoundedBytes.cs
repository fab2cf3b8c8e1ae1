namespace ClassKit.UseCases.Intake;

/// <summary>Reads a stream whose length nobody vouches for.</summary>
internal static class BoundedBytes
{
    private const int Piece = 81_920;

    /// <summary>All its bytes; null if there are more than may be.</summary>
    public static byte[]? Read(Stream stream, int most)
    {
        using var read = new MemoryStream();
        var piece = new byte[Piece];
        while (stream.Read(piece) is > 0 and var length)
        {
            if (read.Length + length > most)
                return null;
            read.Write(piece, 0, length);
        }
        return read.ToArray();
    }
}
