using System.Buffers.Binary;
using System.Security.Cryptography;
using System.Text;

namespace ClassKit.Exercises.Identity;

/// <summary>What tells a form to be filled in from every other: the same for the same class and the same questions.</summary>
public static class FormIdentity
{
    private const int Digits = 16;

    /// <summary>Sixteen hexadecimal digits of the SHA-256 of all that makes the form what it is.</summary>
    /// <param name="kind">What kind of form it is.</param>
    /// <param name="made">Texts, each of which makes it another form.</param>
    public static string Of(string kind, params IEnumerable<string> made)
    {
        ArgumentNullException.ThrowIfNull(kind);
        ArgumentNullException.ThrowIfNull(made);
        using var hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        Span<byte> length = stackalloc byte[sizeof(int)];
        foreach (var text in made.Prepend(kind))
        {
            var bytes = Encoding.UTF8.GetBytes(text);
            // Each with its length, so that no two lists run together into the same bytes.
            BinaryPrimitives.WriteInt32BigEndian(length, bytes.Length);
            hash.AppendData(length);
            hash.AppendData(bytes);
        }
        return Convert.ToHexStringLower(hash.GetHashAndReset())[..Digits];
    }
}
