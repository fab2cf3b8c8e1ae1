using System.Text;
using ClassKit.Content.Diagnostics;

namespace ClassKit.Content.Sources;

/// <summary>The door through which authored text comes in: UTF-8, with or without byte order mark, any line ends.</summary>
internal static class SourceFile
{
    private static readonly UTF8Encoding StrictUtf8 = new(encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: true);

    /// <summary>The text with <c>\n</c> line ends, or null with the reason noted.</summary>
    public static string? Read(Source source, ProblemList problems) =>
        Bytes(source, problems) is { } bytes ? Decode(bytes, problems) : null;

    /// <summary>What is in the file, or null with the reason noted.</summary>
    public static byte[]? Bytes(Source source, ProblemList problems)
    {
        if (source.IsFolder)
        {
            problems.Add(null, "This is a folder", "Name a file in it.");
            return null;
        }
        if (!source.IsFile)
        {
            problems.Add(null, "There is no such file", Nearby.Files(source) ?? "Check the spelling and the folder.");
            return null;
        }
        var file = source.Library.Bytes(source.Path);
        if (file.Refused is { } refused)
            problems.Add(
                null,
                $"The file cannot be opened: {refused.TrimEnd('.')}",
                "Close it in other programs and check its permissions."
            );
        else if (file.IsTooLarge)
            problems.Add(null, "The file is larger than 1 MB", "A text file is expected here: check that the right file was named.");
        else
            return file.Bytes;
        return null;
    }

    private static string? Decode(byte[] bytes, ProblemList problems)
    {
        if (bytes is [0xFF, 0xFE, ..] or [0xFE, 0xFF, ..])
        {
            problems.Add(null, "The file is saved as UTF-16", "Save it as UTF-8 (in a spreadsheet program: \"CSV UTF-8\").");
            return null;
        }
        try
        {
            var text = StrictUtf8.GetString(bytes).TrimStart('\uFEFF').ReplaceLineEndings("\n");
            if (!text.Contains('\0', StringComparison.Ordinal))
                return text;
            problems.Add(null, "The file is not text", "A text file saved as UTF-8 is expected here.");
            return null;
        }
        catch (DecoderFallbackException)
        {
            problems.Add(
                null,
                "The file is not saved as UTF-8",
                "Open it in a text editor and save it with the encoding UTF-8, so that accented letters survive."
            );
            return null;
        }
    }
}
