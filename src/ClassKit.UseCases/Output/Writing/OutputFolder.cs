using ClassKit.Content.Diagnostics;
using ClassKit.UseCases.Running;

namespace ClassKit.UseCases.Output.Writing;

/// <summary>Writes a use case's files so that a folder holds either the old ones or the new ones, and touches nothing else in it.</summary>
/// <remarks>
/// ClassKit owns files, not folders. New files wait in a hidden work folder until all are whole and on the disk; then a journal is laid
/// down that says what is to happen, and renaming makes it happen within milliseconds. A run killed before the journal has changed nothing;
/// one killed after it is finished by the next run that writes to the folder or reads from it (<see cref="Settle"/>). A folder that does
/// not exist is made beside its place and appears there in one step.
/// </remarks>
public static class OutputFolder
{
    private const string WayOut =
        "Check that there is room, that you may write there and that no other program has its files open; what was there before is untouched.";

    private const string CloseAndRepeat = "Close the programs that have its files open, and run the command that writes it again.";

    /// <summary>Makes files and replaces by them what ClassKit wrote into the folder before. Nobody else writes to it meanwhile.</summary>
    /// <param name="target">The folder; created with its parents if it is not there.</param>
    /// <param name="make">Makes the files.</param>
    /// <param name="run">Told of every file that is made; null for nobody.</param>
    /// <exception cref="OperationCanceledException">The run was stopped, and the folder is as it was.</exception>
    public static Written Write(OutputTarget target, Func<Produced> make, Run? run = null)
    {
        ArgumentNullException.ThrowIfNull(target);
        ArgumentNullException.ThrowIfNull(make);
        if (target.Folder.Length == 0)
            return Written.Nothing(
                new Diagnostic("output folder", null, "It has no name", "Name the folder to write to.") { Remedy = Remedy.NameOutputFolder }
            );
        try
        {
            if (Refusals.Of(target) is { } refusal)
                return Written.Nothing(refusal);
            var (session, busy) = WritingSession.Open(target);
            if (session is null)
                return Written.Nothing(busy!);
            using (session)
                return session.Write(make, run ?? Run.Unwatched);
        }
        catch (CutOffException failure)
        {
            return Written.Nothing(
                new Diagnostic(
                    target.Folder,
                    null,
                    $"Some of the new files are in place, and the others cannot be put there: {failure.Message}",
                    CloseAndRepeat
                )
            ) with
            {
                IsCutOff = true,
            };
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException or InvalidDataException)
        {
            return Written.Nothing(new Diagnostic(target.Folder, null, $"It could not be written: {failure.Message}", WayOut));
        }
    }

    /// <summary>Replaces what ClassKit wrote into a folder before by files that are at hand.</summary>
    public static Written Write(string folder, string kind, IReadOnlyList<OutputFile> files) =>
        Write(new(folder, kind), () => new(files, [], []));

    /// <summary>Takes single files of ours out of a folder and puts others in the places of theirs, all of it or nothing.</summary>
    /// <param name="folder">An output folder.</param>
    /// <param name="kind">What is doing so.</param>
    /// <param name="anew">What takes the place of files of ours.</param>
    /// <param name="gone">The files of ours to take away, by their paths within the folder.</param>
    /// <exception cref="IOException">It cannot be done, or somebody is writing to the folder.</exception>
    /// <exception cref="UnauthorizedAccessException">It must not be done.</exception>
    internal static void Amend(string folder, string kind, IReadOnlyList<OutputFile> anew, IReadOnlySet<string> gone)
    {
        var (session, busy) = WritingSession.Open(new(folder, kind));
        if (session is null)
            throw new IOException($"{busy!.Found}");
        using (session)
            session.Amend(anew, gone);
    }

    /// <summary>
    /// The versions of files of ours that the instructor has changed: of each those set aside, and the present one if it no longer is as it
    /// was written.
    /// </summary>
    /// <param name="folder">The output folder, which may not be there.</param>
    /// <param name="paths">The files, within the folder.</param>
    /// <exception cref="IOException">The folder cannot be looked at.</exception>
    /// <exception cref="UnauthorizedAccessException">The folder must not be looked at.</exception>
    /// <exception cref="InvalidDataException">Its list of our files is damaged.</exception>
    internal static IReadOnlyList<string> Changed(string folder, IEnumerable<string> paths)
    {
        if (!Directory.Exists(folder))
            return [];
        var own = new OwnFiles(folder, OutputManifest.Read(folder), ignoresCase: false);
        return
        [
            .. paths.SelectMany(path =>
                SetAside
                    .NamesOf(folder, path)
                    .Concat(own.Has(path) && own.At(path).IsChanged && Place.At(OwnPath.In(folder, path)) == Standing.File ? [path] : [])
            ),
        ];
    }

    /// <summary>
    /// To be called before files of an output folder are read: finishes a run that was cut off while it put its files in place.
    /// </summary>
    /// <param name="folder">The folder, or one in it.</param>
    /// <returns>Why its files cannot be relied on; null if they can.</returns>
    public static Diagnostic? Settle(string folder)
    {
        ArgumentNullException.ThrowIfNull(folder);
        if (folder.Length == 0)
            return null;
        try
        {
            for (var at = Place.Real(folder); !string.IsNullOrEmpty(at); at = Path.GetDirectoryName(at))
            {
                var work = new WorkFolder(at);
                if (!work.HasJournal)
                    continue;
                using var held = WriterLock.TryTake(at);
                if (held is null)
                    return new(folder, null, $"{work.Writer()} is putting files in place here", "Wait until it is done, then try again.");
                if (work.HasJournal)
                    Recovery.Run(work);
            }
            return null;
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException or InvalidDataException)
        {
            return new(
                folder,
                null,
                $"A run was cut off while it put its files in place here, and they cannot be put there now: {failure.Message}",
                CloseAndRepeat
            );
        }
    }
}
