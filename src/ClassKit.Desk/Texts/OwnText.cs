using System.Security.Cryptography;
using System.Text;
using System.Text.Unicode;
using ClassKit.Content.Diagnostics;
using ClassKit.Content.Sheets;
using ClassKit.UseCases.Output.Writing;

namespace ClassKit.Desk.Texts;

/// <summary>
/// A file of the instructor's own, as it was when a page showed it: it is written only over the very same, so that what somebody typed into
/// it meanwhile is never lost.
/// </summary>
/// <param name="Path">Where it is.</param>
/// <param name="Bytes">What is in it.</param>
public sealed record OwnText(string Path, ReadOnlyMemory<byte> Bytes)
{
    /// <summary>More than this is no text that somebody edits on a page.</summary>
    private const int MostBytes = 1 << 20;

    private static readonly byte[] Mark = [0xEF, 0xBB, 0xBF];

    /// <summary>Between looking at the file and writing over it nobody else of this desk writes.</summary>
    private static readonly Lock Writing = new();

    /// <summary>Its text, with line feeds alone.</summary>
    public string Text => TableLetters.Decode(Bytes.ToArray()).Text.TrimStart('\uFEFF').ReplaceLineEndings("\n");

    /// <summary>What tells this state of the file from any other.</summary>
    public string Stamp => Convert.ToHexString(SHA256.HashData(Bytes.Span));

    private bool HasMark => Bytes.Span.StartsWith(Mark);

    /// <summary>
    /// True for a table in the letters of an old spreadsheet: what is written over it is UTF-8 with a mark, which every spreadsheet reads,
    /// or names would lose their accents.
    /// </summary>
    private bool IsOfOldLetters => !Utf8.IsValid(Bytes.Span);

    private bool HasReturns => Bytes.Span.IndexOf("\r\n"u8) >= 0;

    /// <summary>
    /// The file as it is now; null if it is no text, or too large. Tables may be in the letters of old spreadsheets, as they are read
    /// elsewhere; nothing else may.
    /// </summary>
    public static OwnText? Read(string path)
    {
        var file = new FileInfo(path);
        if (!file.Exists || file.LinkTarget is not null || file.Length > MostBytes)
            return null;
        var bytes = File.ReadAllBytes(path);
        return bytes.Contains((byte)0) || (!Utf8.IsValid(bytes) && !IsTable(path)) ? null : new(path, bytes);
    }

    private static bool IsTable(string path) => System.IO.Path.GetExtension(path).ToUpperInvariant() is ".CSV" or ".TSV";

    /// <summary>The bytes of another text in the file's own way: its mark and its line ends.</summary>
    public byte[] With(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        var plain = text.ReplaceLineEndings(HasReturns ? "\r\n" : "\n");
        return [.. HasMark || IsOfOldLetters ? Mark : [], .. Encoding.UTF8.GetBytes(plain)];
    }

    /// <summary>
    /// What is said where a form comes back after the file was changed: the form shows the file as it is now, and what was typed otherwise
    /// is named, so that neither is lost.
    /// </summary>
    /// <param name="typed">What was typed and differs from what is in the file now, each with what it is of.</param>
    public Diagnostic Meanwhile(IEnumerable<string> typed)
    {
        var differing = string.Join("; ", typed);
        return new(
            Path,
            null,
            "The file was changed meanwhile, here or in another program",
            $"Nothing was written over it. Below stands what is in it now. {(differing.Length == 0 ? "What you typed is in it as well." : $"You had typed: {differing}. Type again what is still to hold, and keep it.")}"
        );
    }

    /// <summary>Why nothing may be written over the file; null if it is as the instructor saw it.</summary>
    /// <param name="stamp">The file as the instructor saw it.</param>
    public Diagnostic? Changed(string stamp) =>
        stamp == Stamp
            ? null
            : new(
                Path,
                null,
                "The file was changed meanwhile, here or in another program",
                "Nothing was written over it. Below stands what is in it now: bring yours together with it, and keep it again."
            );

    /// <summary>Writes over the file, whole or not at all.</summary>
    /// <param name="stamp">The file as the instructor saw it.</param>
    /// <param name="content">What is to be in it.</param>
    /// <returns>Why it was not written; null if it was.</returns>
    public Diagnostic? Write(string stamp, byte[] content)
    {
        if (Changed(stamp) is { } changed)
            return changed;
        try
        {
            lock (Writing)
            {
                // Much may have been worked out since this was read, and another program may have saved the file in that time.
                if (Read(Path) is { } now && now.Changed(stamp) is { } since)
                    return since;
                WholeFile.Write(Path, content);
            }
            return null;
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            return new(
                Path,
                null,
                $"It could not be written: {failure.Message}",
                "Check that there is room, and that no other program has the file open. What was there is untouched."
            );
        }
    }
}
