using System.Buffers.Binary;
using System.Security.Cryptography;
using System.Text;

namespace ClassKit.Exercises.Identity;

/// <summary>What tells a form to be filled in from every other: the same for the same class and the same questions.</summary>
public static class FormIdentity
{
    private const int Digits = 16;

    /// <summary>
    /// True of a file that says that it is of a form. Forms made before 2026-11-30 were tied to the name of their class as well, which
    /// stands in what they call themselves.
    /// </summary>
    /// <param name="identity">The identity in the file.</param>
    /// <param name="called">What it calls itself; null where it does not say.</param>
    /// <param name="title">The title of what is filled in.</param>
    /// <param name="cohort">What the class is called now.</param>
    /// <param name="with">The form's identity with the names of a class: none, as it is now, or one, as it was.</param>
    public static bool IsOf(string identity, string? called, string title, string cohort, Func<IEnumerable<string>, string> with)
    {
        ArgumentNullException.ThrowIfNull(with);
        return identity == with([]) || identity == with([FormName.ClassIn(called, title) ?? cohort]);
    }

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
