using ClassKit.Content.Diagnostics;
using ClassKit.UseCases.Output.Writing;

namespace ClassKit.Desk.Texts;

/// <summary>Writes several files of the instructor's own, all of them or none.</summary>
public static class OwnTexts
{
    /// <summary>Writes them one after another; where one is refused, those before it are put back.</summary>
    /// <returns>Why none was written; null if all were.</returns>
    public static Diagnostic? Write(IReadOnlyList<NewText> texts)
    {
        ArgumentNullException.ThrowIfNull(texts);
        // Whatever can be known beforehand is, so that going back is for a disk that fails in between.
        foreach (var text in texts)
        {
            if (Refused(text, now => now.Changed(text.Before!.Stamp)) is { } refused)
                return refused;
        }
        var done = new Stack<NewText>();
        foreach (var text in texts)
        {
            if (Refused(text, now => now.Write(text.Before!.Stamp, now.With(text.Text))) is { } refused)
            {
                // Each of them is put back, whatever becomes of the others.
                List<Diagnostic> lost = [.. done.Select(written => Back(written, refused)).OfType<Diagnostic>()];
                return lost switch
                {
                    [] => refused,
                    [var one] => one,
                    [var first, .. var others] => first with
                    {
                        Expected = $"{first.Expected} The same holds for {string.Join(", ", others.Select(other => other.File))}.",
                    },
                };
            }
            done.Push(text);
        }
        return null;
    }

    private static Diagnostic? Refused(NewText text, Func<OwnText, Diagnostic?> write) =>
        text.Before is not null && OwnText.Read(text.Path) is { } now
            ? write(now)
            : new(text.Path, null, "It cannot be read any more", "Look whether it is there, and is a text.");

    private static Diagnostic? Back(NewText written, Diagnostic because)
    {
        try
        {
            WholeFile.Write(written.Path, written.Before!.Bytes.Span);
            return null;
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            return new(
                written.Path,
                null,
                $"This one was written, and could not be put back: {failure.Message}",
                $"Take out of it what you do not want. {because.File} was not written: {because.Found}"
            );
        }
    }
}
