using ClassKit.Content.Classes;
using ClassKit.Content.Diagnostics;
using ClassKit.Desk.Folders;
using ClassKit.Exercises.Dealing;
using ClassKit.Exercises.Marking;

namespace ClassKit.Desk.Decisions;

/// <summary>The instructor's table of corrections in a round's folder of grades: lines are added and taken out, and whatever else stands there stays.</summary>
internal static class CorrectionsFile
{
    private static readonly Lock Changing = new();

    /// <summary>Puts a correction at the end, in place of one of the same answer.</summary>
    /// <returns>Why it could not be; null if it was.</returns>
    public static Diagnostic? Put(Round round, DealtClass dealt, Correction correction) => Change(round, table =>
    {
        var others = table is null ? null : CorrectionsEraser.Without(table, dealt, correction.Student, correction.Exercise, correction.Part) ?? table;
        return [.. others ?? [], .. CorrectionsAppender.Lines(others, [correction])];
    });

    /// <summary>Takes the correction of an answer out.</summary>
    /// <returns>Why it could not be; null if it was, or was not there.</returns>
    public static Diagnostic? Remove(Round round, DealtClass dealt, string student, string exercise, string part) => Change(round, table => table is null ? null : CorrectionsEraser.Without(table, dealt, student, exercise, part));

    private static Diagnostic? Change(Round round, Func<byte[]?, byte[]?> change)
    {
        var path = Path.Combine(round.Graded, CorrectionsReader.FileName);
        try
        {
            lock (Changing)
            {
                if (change(File.Exists(path) ? File.ReadAllBytes(path) : null) is not { } changed) return null;
                var whole = path + ".new";
                File.WriteAllBytes(whole, changed);
                File.Move(whole, path, overwrite: true);
                return null;
            }
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            return new(path, null, $"It could not be written: {failure.Message}", "Close the program that has it open, and decide again.");
        }
    }
}
