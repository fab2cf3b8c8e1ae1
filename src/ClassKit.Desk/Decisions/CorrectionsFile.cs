using ClassKit.Content.Classes;
using ClassKit.Content.Diagnostics;
using ClassKit.Desk.Folders;
using ClassKit.Exercises.Dealing;
using ClassKit.Exercises.Marking;
using ClassKit.UseCases.Output.Writing;

namespace ClassKit.Desk.Decisions;

/// <summary>
/// The instructor's table of corrections in a round's folder of grades: lines are added and taken out, and whatever else stands there
/// stays.
/// </summary>
internal static class CorrectionsFile
{
    private static readonly Lock Changing = new();

    /// <summary>Puts corrections at the end, in place of those of the same answers.</summary>
    /// <returns>Why it could not be; null if it was.</returns>
    public static Diagnostic? Put(Round round, DealtClass dealt, IReadOnlyList<Correction> corrections) => Change(round, table =>
        {
            var others = Without(table, dealt, [.. corrections.Select(one => (one.Student, one.Exercise, one.Part))]);
            return [.. others ?? [], .. CorrectionsAppender.Lines(others, corrections)];
        });

    /// <summary>Takes the corrections of answers out; those that are not there are passed over.</summary>
    /// <returns>Why it could not be; null if it was.</returns>
    public static Diagnostic? Remove(
        Round round,
        DealtClass dealt,
        IReadOnlyList<(string Student, string Exercise, string Part)> answers
    ) => Change(round, table => Without(table, dealt, [.. answers]));

    private static byte[]? Without(byte[]? table, DealtClass dealt, HashSet<(string, string, string)> answers) =>
        table is null ? null : CorrectionsEraser.Without(table, dealt, answers) ?? table;

    private static Diagnostic? Change(Round round, Func<byte[]?, byte[]?> change)
    {
        var path = Path.Combine(round.Graded, CorrectionsReader.FileName);
        try
        {
            lock (Changing)
            {
                if (change(File.Exists(path) ? File.ReadAllBytes(path) : null) is not { } changed)
                    return null;
                WholeFile.Write(path, changed);
                return null;
            }
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            return new(path, null, $"It could not be written: {failure.Message}", "Close the program that has it open, and decide again.");
        }
    }
}
