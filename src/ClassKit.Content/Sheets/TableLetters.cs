using System.Text;
using System.Text.Unicode;
using ClassKit.Content.Diagnostics;
using ClassKit.Content.Sources;

namespace ClassKit.Content.Sheets;

/// <summary>
/// The text of a table as spreadsheet programs save it: UTF-8 with or without a mark, UTF-16 with one, else Windows-1252.
/// </summary>
/// <remarks>
/// Plain “CSV” is saved in the machine's own code page, which in western Europe and the Americas is Windows-1252; others cannot be told
/// from it by their bytes.
/// </remarks>
public static class TableLetters
{
    private static readonly Lazy<Encoding> Windows1252 = new(() => CodePagesEncodingProvider.Instance.GetEncoding(1252)!);

    /// <summary>The text with <c>\n</c> line ends and whether its letters were guessed, or null with the reason noted.</summary>
    internal static (string Text, bool Guessed)? Read(Source source, ProblemList problems)
    {
        if (SourceFile.Bytes(source, problems) is not { } bytes)
            return null;
        var (text, guessed) = Decode(bytes);
        if (!text.Contains('\0', StringComparison.Ordinal))
            return (text.TrimStart('\uFEFF').ReplaceLineEndings("\n"), guessed);
        problems.Add(null, "The file is not text", "Save the list as .xlsx, .ods or CSV.");
        return null;
    }

    /// <summary>The text of bytes, a mark at its head included, and whether its letters were guessed.</summary>
    public static (string Text, bool Guessed) Decode(byte[] bytes)
    {
        ArgumentNullException.ThrowIfNull(bytes);
        var letters = Of(bytes);
        return (letters.GetString(bytes), letters == Windows1252.Value);
    }

    /// <summary>What the letters are written in.</summary>
    internal static Encoding Of(byte[] bytes) =>
        bytes switch
        {
            [0xFF, 0xFE, ..] => Encoding.Unicode,
            [0xFE, 0xFF, ..] => Encoding.BigEndianUnicode,
            _ => Utf8.IsValid(bytes) ? Encoding.UTF8 : Windows1252.Value,
        };
}
