using System.Security.Cryptography;

namespace ClassKit.UseCases.Output.Writing;

/// <summary>SHA-256 of a file, in lower-case hexadecimal digits as the usual tools print it.</summary>
internal static class Digest
{
    public const int Length = 64;

    private static readonly string OfNothing = Text(SHA256.HashData([]));

    /// <summary>
    /// The digest of a regular file; null for a link, a folder or nothing. A pipe has that of an empty file, since it is never opened.
    /// </summary>
    public static string? Of(string path)
    {
        if (Place.At(path) != Standing.File)
            return null;
        if (new FileInfo(path).Length == 0)
            return OfNothing;
        using var stream = File.OpenRead(path);
        return Text(SHA256.HashData(stream));
    }

    public static bool IsOne(string text) => text.Length == Length && text.All(char.IsAsciiHexDigitLower);

    public static string Text(byte[] hash) => Convert.ToHexStringLower(hash);
}
