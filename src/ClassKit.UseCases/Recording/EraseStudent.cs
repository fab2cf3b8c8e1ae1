using System.Diagnostics;
using ClassKit.Content.Diagnostics;
using ClassKit.Notes;
using ClassKit.Records.Classes;
using ClassKit.Records.Erasing;
using ClassKit.Records.Storage;
using ClassKit.UseCases.Erasing;
using ClassKit.UseCases.Output;
using ClassKit.UseCases.Running;

namespace ClassKit.UseCases.Recording;

/// <summary>
/// Takes a student out of the record, and out of the files of the teaching folder where that is asked for: the class's statistics stay on
/// record, and nobody can say whose they were.
/// </summary>
public static class EraseStudent
{
    /// <summary>What the change is called.</summary>
    public const string Kind = "erase";

    /// <summary>
    /// Erases, or says what it would come to. What was cut off in between goes on when it is done again: class lists come last, so that the
    /// student is known until then.
    /// </summary>
    /// <exception cref="OperationCanceledException">The run was stopped.</exception>
    public static Reading<ErasedStudent> Run(EraseRequest request, Run run)
    {
        ArgumentNullException.ThrowIfNull(request);
        ArgumentNullException.ThrowIfNull(run);
        run.Begin(RunStep.Recording, 1).Next();
        return RecordTroubles.Told(() =>
        {
            var recorded = request.Record?.Read(session => ClassRegister.FindStudent(session, request.Student));
            var who = recorded ?? (request.Folder is { } folder ? StudentFiles.Find(folder, request.Student) : null);
            if (recorded is null && IsToBeScouredAgain(request) && (who is null || !request.WithFiles))
                return new(new(new(request.Student, request.Student), null, []) { InFile = request.Record!.Scour() }, []);
            if (who is null || (recorded is null && !request.WithFiles))
                return new Reading<ErasedStudent>(
                    null,
                    [new(request.Student, null, "The record knows nobody of that id", "Name a student by the id on the roster.")]
                );
            var files = request.Folder is null ? null : StudentFiles.Look(request.Folder, RecordPlace.Of(request.Folder), who);
            try
            {
                var takes = request is { IsMeant: true, WithFiles: true };
                if (takes)
                    files?.TakeOutOfFiles();
                var erased = recorded is null ? null : OffTheRecord(request);
                var inFile =
                    request.IsMeant && (erased is not null || IsToBeScouredAgain(request)) ? request.Record!.Scour() : Scoured.Gone;
                if (takes)
                    files?.TakeOutOfLists();
                return new Reading<ErasedStudent>(
                    new(who, erased, request.Record is { Path: { Length: > 0 } path } ? Backups.Of(path) : [])
                    {
                        InFile = inFile,
                        Traces = files?.Traces ?? [],
                        Fate =
                            takes ? TraceFate.Gone
                            : request.WithFiles ? TraceFate.Asked
                            : TraceFate.Untouched,
                    },
                    []
                );
            }
            catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
            {
                return new Reading<ErasedStudent>(
                    null,
                    [
                        new(
                            request.Folder!,
                            null,
                            $"Some files could not be changed: {failure.Message}",
                            "Close the programs that have them open, and erase once more: what is done already stays done."
                        ),
                    ]
                );
            }
        });
    }

    /// <summary>What the instructor is told.</summary>
    /// <param name="done">What was erased.</param>
    public static Produced Write(ErasedStudent done)
    {
        ArgumentNullException.ThrowIfNull(done);
        return new(
            [],
            [
                .. done.Erased is { } erased
                    ?
                    [
                        new Note.ErasedStudent(
                            erased.Student.Id,
                            erased.Removed,
                            erased.Kept,
                            erased.Mentions,
                            [.. done.Backups.Select(path => Path.GetFileName(path))]
                        ),
                    ]
                    : (IEnumerable<Note>)[new Note.NotOnRecord(done.Who.Id)],
                .. done.InFile == Scoured.Gone ? (IEnumerable<Note>)[] : [new Note.BytesLeft(done.Who.Id, Why(done.InFile))],
                .. done.Traces.Count == 0 ? (IEnumerable<Note>)[] : [new Note.StillNamed(done.Traces, done.Fate)],
            ],
            []
        );
    }

    private static StillInFile Why(Scoured inFile) =>
        inFile switch
        {
            Scoured.WhenClosed => StillInFile.OthersRead,
            Scoured.OthersWrite => StillInFile.OthersWrite,
            Scoured.NoRoom => StillInFile.NoRoom,
            _ => throw new UnreachableException($"Nothing is left where it is {inFile}."),
        };

    private static Erased? OffTheRecord(EraseRequest request)
    {
        // The log says that somebody was erased and why, and not who; whoever brings the id back is known again by the mark.
        return request.Record!.Write(request.Author.Of(Kind, ErasedMark.Of(request.Student)), session =>
        {
            var gone = Erasure.Erase(session, request.Student, Mentions.Without);
            if (!request.IsMeant || gone is null)
                session.Abandon();
            return gone;
        });
    }

    /// <summary>Whoever was erased before is erased once more where their bytes could not be taken out of the file then.</summary>
    private static bool IsToBeScouredAgain(EraseRequest request) =>
        request is { IsMeant: true, Record: { } record } && record.Read(session => StillErased.Among(session, [request.Student])).Count > 0;
}
