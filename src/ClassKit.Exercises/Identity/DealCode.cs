using System.Diagnostics.CodeAnalysis;
using System.Text.RegularExpressions;

namespace ClassKit.Exercises.Identity;

/// <summary>The short form of a deal's identity, to read aloud and to print: six signs and a check sign, as <c>K7M-4RX9</c>.</summary>
/// <remarks>
/// Of signs that are taken for one another (0 O, 1 I L, 2 Z, 5 S, 6 G, 8 B, M N, U V) at most one is used. There are 23, a prime, so that a
/// weighted sum finds every wrong sign and every two that changed places, as the check digit of an ISBN-10 does (ISO 2108:1992, with 11).
/// </remarks>
public static partial class DealCode
{
    private const string Signs = "23456789ACDEFHJKMPRTWXY";
    private const int Payload = 6;
    private const int Break = 3;

    /// <summary>The code of a digest.</summary>
    /// <param name="digest">At least eight bytes.</param>
    internal static string Of(ReadOnlySpan<byte> digest)
    {
        var rest = System.Buffers.Binary.BinaryPrimitives.ReadUInt64BigEndian(digest);
        Span<char> code = stackalloc char[Payload + 1];
        var sum = 0;
        for (var at = 0; at < Payload; at++)
        {
            var value = (int)(rest % (ulong)Signs.Length);
            rest /= (ulong)Signs.Length;
            code[at] = Signs[value];
            sum += Weight(at) * value;
        }
        // The check sign weighs 1, so that it makes the sum a multiple of 23.
        code[Payload] = Signs[(Signs.Length - sum % Signs.Length) % Signs.Length];
        return $"{code[..Break]}-{code[Break..]}";
    }

    /// <summary>
    /// The code in a text that is a code, or says <c>deal</c> and a code, with what ends a sentence or a bracket after it; false where there is none or its check sign is wrong.
    /// </summary>
    public static bool TryFind(string text, [NotNullWhen(true)] out string? code)
    {
        ArgumentNullException.ThrowIfNull(text);
        code =
            Code().Match(text) is { Success: true } match && IsSound(match.Groups["code"].Value.ToUpperInvariant())
                ? match.Groups["code"].Value.ToUpperInvariant()
                : null;
        return code is not null;
    }

    private static bool IsSound(string code)
    {
        var signs = code.Remove(Break, 1);
        return signs.Select((sign, at) => Weight(at) * Signs.IndexOf(sign, StringComparison.Ordinal)).Sum() % Signs.Length == 0;
    }

    private static int Weight(int place) => Payload + 1 - place;

    [GeneratedRegex(
        @"(?:^\s*|\bdeal )(?<code>[2-9ACDEFHJKMPRTWXY]{3}-[2-9ACDEFHJKMPRTWXY]{4})(?=[.,;:!?)\]]*(?:\s|$))",
        RegexOptions.IgnoreCase | RegexOptions.CultureInvariant
    )]
    private static partial Regex Code();
}
