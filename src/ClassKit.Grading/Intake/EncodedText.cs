using System.Text;
using System.Text.RegularExpressions;

namespace ClassKit.Grading.Intake;

/// <summary>File names that mail programs, course sites and browsers have encoded, as they were typed.</summary>
internal static partial class EncodedText
{
    /// <summary>The name with every encoding undone that is recognised; what is none stays as it is.</summary>
    public static string Decode(string name) => Misread(Percent(Mail(name)));

    /// <summary>
    /// Encoded words of mail headers (RFC 2047), also where a program put <c>_</c> for <c>?</c>, which file names may not have.
    /// </summary>
    private static string Mail(string name) =>
        EncodedWord()
            .Replace(name, word =>
            {
                var charset = word.Groups["charset"].Value.Equals("utf-8", StringComparison.OrdinalIgnoreCase)
                    ? Encoding.UTF8
                    : Encoding.Latin1;
                var text = word.Groups["text"].Value;
                return word.Groups["way"].Value is "B" or "b"
                    ? Base64(text, charset) ?? word.Value
                    : charset.GetString(QuotedPrintable(text));
            });

    private static string? Base64(string text, Encoding charset)
    {
        var bytes = new byte[text.Length];
        return Convert.TryFromBase64String(text, bytes, out var length) ? charset.GetString(bytes, 0, length) : null;
    }

    private static byte[] QuotedPrintable(string text)
    {
        var bytes = new List<byte>(text.Length);
        for (var at = 0; at < text.Length; at++)
        {
            if (
                text[at] == '='
                && at + 2 < text.Length
                && byte.TryParse(text.AsSpan(at + 1, 2), System.Globalization.NumberStyles.AllowHexSpecifier, null, out var code)
            )
            {
                bytes.Add(code);
                at += 2;
            }
            else
            {
                bytes.Add(text[at] is '_' or > '\u007F' ? (byte)' ' : (byte)text[at]);
            }
        }

        return [.. bytes];
    }

    /// <summary><c>J%C3%BCrgen%20Meyer</c> as in addresses, and <c>utf-8''J%C3%BCrgen</c> as in downloads (RFC 8187).</summary>
    private static string Percent(string name)
    {
        if (name.StartsWith("utf-8''", StringComparison.OrdinalIgnoreCase))
            name = name["utf-8''".Length..];
        return name.Contains('%', StringComparison.Ordinal) ? Uri.UnescapeDataString(name) : name;
    }

    /// <summary>UTF-8 that some program read as Latin-1: <c>JÃ¼rgen</c>.</summary>
    private static string Misread(string name)
    {
        if (!name.Any(character => character > '\u007F') || name.Any(character => character > '\u00FF'))
            return name;
        try
        {
            return StrictUtf8.GetString(Encoding.Latin1.GetBytes(name));
        }
        catch (DecoderFallbackException)
        {
            return name;
        }
    }

    private static readonly UTF8Encoding StrictUtf8 = new(encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: true);

    [GeneratedRegex(
        @"=[?_](?<charset>utf-8|us-ascii|iso-8859-1|windows-1252)[?_](?<way>[bq])[?_](?<text>[^?\s]*?)[?_]=",
        RegexOptions.IgnoreCase | RegexOptions.CultureInvariant
    )]
    private static partial Regex EncodedWord();
}
