using ClassKit.Content.Diagnostics;
using ClassKit.Notes;
using ClassKit.Records.Storage;
using ClassKit.UseCases.Output;
using ClassKit.UseCases.Running;

namespace ClassKit.UseCases.Recording;

/// <summary>
/// Keeps the record in a folder of the instructor's choice: a whole copy stands there before the old file goes, and the teaching folder
/// says where it is.
/// </summary>
public static class MoveRecord
{
    /// <summary>What the change is called.</summary>
    public const string Kind = "keep-in";

    /// <summary>Moves it.</summary>
    /// <returns>Where it lies now, or why it stayed.</returns>
    /// <exception cref="OperationCanceledException">The run was stopped.</exception>
    public static Reading<BackedUp> Run(MoveRequest request, Run run)
    {
        ArgumentNullException.ThrowIfNull(request);
        ArgumentNullException.ThrowIfNull(run);
        run.Begin(RunStep.Recording, 1).Next();
        var from = RecordPlace.Of(request.From);
        var to = Path.Combine(Path.GetFullPath(request.To), Path.GetFileName(from));
        return RecordTroubles.Told(() =>
        {
            var folder = Directory.Exists(request.From) ? request.From : Path.GetDirectoryName(Path.GetFullPath(from))!;
            var pointer = Path.Combine(folder, RecordPlace.KeptElsewhere);
            try
            {
                using var record = TeachingRecord.Open(from, request.Now, mayBegin: false);
                record.MoveTo(to, () =>
                {
                    if (Path.GetFullPath(folder) != Path.GetDirectoryName(to))
                        File.WriteAllText(pointer, to + "\n");
                    else
                        File.Delete(pointer);
                });
            }
            catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
            {
                return new(
                    null,
                    [
                        new(
                            pointer,
                            null,
                            $"It says where the record is kept, and could not be changed: {failure.Message}",
                            $"The record stays in {from}. Make that file one that you may write, delete the copy in {to}, and move it again."
                        ),
                    ]
                );
            }
            return new Reading<BackedUp>(new(to), []);
        });
    }

    /// <summary>What the instructor is told.</summary>
    public static Produced Write(BackedUp moved)
    {
        ArgumentNullException.ThrowIfNull(moved);
        return new([], [new Note.RecordMoved(moved.Path)], []);
    }
}
