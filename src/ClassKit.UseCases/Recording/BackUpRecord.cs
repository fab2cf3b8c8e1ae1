using ClassKit.Content.Diagnostics;
using ClassKit.Notes;
using ClassKit.UseCases.Output;
using ClassKit.UseCases.Running;

namespace ClassKit.UseCases.Recording;

/// <summary>Reads the record through and has the database make a copy of it, which is read through as well.</summary>
public static class BackUpRecord
{
    /// <summary>What the change is called.</summary>
    public const string Kind = "back-up";

    /// <summary>Makes the copy.</summary>
    /// <returns>Where it lies, or what is wrong with the record.</returns>
    /// <exception cref="OperationCanceledException">The run was stopped.</exception>
    public static Reading<BackedUp> Run(BackUpRequest request, Run run)
    {
        ArgumentNullException.ThrowIfNull(request);
        ArgumentNullException.ThrowIfNull(run);
        run.Begin(RunStep.Recording, 1).Next();
        return RecordTroubles.Told(() => new Reading<BackedUp>(new(request.Record.BackUp(request.Now)), []));
    }

    /// <summary>What the instructor is told.</summary>
    public static Produced Write(BackedUp copy)
    {
        ArgumentNullException.ThrowIfNull(copy);
        return new([], [new Note.CopyMade(copy.Path)], []);
    }
}
