using System.Security.Cryptography;
using System.Text;

namespace ClassKit.Grading.Pseudonyms;

/// <summary>What pseudonyms are made with, and cannot be worked out without: 32 bytes drawn at random.</summary>
public sealed class PseudonymSecret
{
    /// <summary>How many bytes it has: as many as the digest (RFC 2104, 3).</summary>
    public const int Bytes = 32;

    private readonly byte[] _bytes;

    /// <summary>The secret of bytes.</summary>
    /// <exception cref="ArgumentException">They are not <see cref="Bytes"/>.</exception>
    public PseudonymSecret(ReadOnlySpan<byte> bytes) =>
        _bytes = bytes.Length == Bytes ? bytes.ToArray() : throw new ArgumentException($"A secret has {Bytes} bytes.", nameof(bytes));

    /// <summary>The secret as it is kept: 64 hexadecimal digits.</summary>
    public string Text => Convert.ToHexStringLower(_bytes);

    /// <summary>The secret that was kept; null where a text is none.</summary>
    public static PseudonymSecret? Parse(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        var digits = text.Trim();
        return digits.Length == 2 * Bytes && digits.All(char.IsAsciiHexDigit) ? new(Convert.FromHexString(digits)) : null;
    }

    internal byte[] DigestOf(string text) => HMACSHA256.HashData(_bytes, Encoding.UTF8.GetBytes(text));
}
