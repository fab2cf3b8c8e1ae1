namespace ClassKit.Content.Sources;

/// <summary>What is in a file, or why it is not known.</summary>
/// <param name="Bytes">The bytes, or only the first of them where there are too many; none where the file was refused.</param>
/// <param name="IsTooLarge">True if there are more than any page that a person writes has.</param>
/// <param name="Refused">Why it cannot be opened; null if it can.</param>
internal sealed record SourceBytes(byte[] Bytes, bool IsTooLarge, string? Refused)
{
    /// <summary>Far above any page that a person writes; what is larger was named by mistake.</summary>
    private const int Most = 1024 * 1024;

    public static SourceBytes Read(ISourceTree tree, string path)
    {
        try
        {
            using var stream = tree.Open(path);
            var bytes = new byte[Most + 1];
            var length = stream.ReadAtLeast(bytes, bytes.Length, throwOnEndOfStream: false);
            return new(bytes[..Math.Min(length, Most)], length > Most, null);
        }
        catch (Exception refused) when (refused is IOException or UnauthorizedAccessException)
        {
            return new([], false, refused.Message);
        }
    }

    /// <summary>All bytes of a file; null if it cannot be opened or has more.</summary>
    public static byte[]? Whole(ISourceTree tree, string path, int most)
    {
        try
        {
            using var stream = tree.Open(path);
            var bytes = new byte[most + 1];
            var length = stream.ReadAtLeast(bytes, bytes.Length, throwOnEndOfStream: false);
            return length > most ? null : bytes[..length];
        }
        catch (Exception refused) when (refused is IOException or UnauthorizedAccessException)
        {
            return null;
        }
    }

    /// <summary>The first lines, whatever they are written in.</summary>
    public IEnumerable<string> FirstLines(int most)
    {
        using var reader = new StreamReader(new MemoryStream(Bytes, writable: false));
        for (var line = 0; line < most && reader.ReadLine() is { } text; line++)
            yield return text;
    }
}
