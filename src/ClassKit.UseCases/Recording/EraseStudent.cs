using ClassKit.Content.Diagnostics;
using ClassKit.Notes;
using ClassKit.Records.Erasing;
using ClassKit.Records.Storage;
using ClassKit.UseCases.Output;
using ClassKit.UseCases.Running;

namespace ClassKit.UseCases.Recording;

/// <summary>Takes a student out of the record: the class's statistics stay, and nobody can say whose they were.</summary>
public static class EraseStudent
{
    /// <summary>What the change is called.</summary>
    public const string Kind = "erase";

    /// <summary>Erases, or says what it would come to.</summary>
    /// <exception cref="OperationCanceledException">The run was stopped.</exception>
    public static Reading<ErasedStudent> Run(EraseRequest request, Run run)
    {
        ArgumentNullException.ThrowIfNull(request);
        ArgumentNullException.ThrowIfNull(run);
        run.Begin(RunStep.Recording, 1).Next();
        return RecordTroubles.Told(() =>
        {
            // The log says that somebody was erased and why, and not who; whoever brings the id back is known again by the mark.
            var erased = request.Record.Write(request.Author.Of(Kind, ErasedMark.Of(request.Student)), session =>
            {
                var gone = Erasure.Erase(session, request.Student, Mentions.Without);
                if (!request.IsMeant || gone is null) session.Abandon();
                return gone;
            });
            if (erased is null) return new Reading<ErasedStudent>(null, [new(request.Student, null, "The record knows nobody of that id", "Name a student by the id on the roster.")]);
            if (request.IsMeant) request.Record.Scour();
            return new(new(erased, request.Record.Path.Length == 0 ? [] : Backups.Of(request.Record.Path)), []);
        });
    }

    /// <summary>What the instructor is told.</summary>
    /// <param name="done">What was erased.</param>
    /// <param name="named">The files that still name the student, below the teaching folder; null where they are shown in another place.</param>
    public static Produced Write(ErasedStudent done, FilesNaming? named = null)
    {
        ArgumentNullException.ThrowIfNull(done);
        var erased = done.Erased;
        return new([], [new Note.ErasedStudent(erased.Student.Id, erased.Removed, erased.Kept, erased.Mentions, [.. done.Backups.Select(path => Path.GetFileName(path))]), .. named is { Alone.Count: 0, Others.Count: 0 } or null ? (IEnumerable<Note>)[] : [new Note.StillNamed(named.Alone, named.Others)]], []);
    }
}
