using ClassKit.Content.Diagnostics;
using ClassKit.Notes;
using ClassKit.UseCases.Running;

namespace ClassKit.UseCases.Output.Writing;

/// <summary>One run's time with an output folder, which nobody else writes to while it lasts.</summary>
internal sealed class WritingSession : IDisposable
{
    private readonly OutputTarget _target;
    private readonly string _full;
    private readonly WorkFolder _work;
    private readonly WriterLock _lock;
    private readonly IReadOnlyList<string> _madeParents;
    private bool _isKept;

    private WritingSession(OutputTarget target, string full, WorkFolder work, WriterLock held, IReadOnlyList<string> madeParents) =>
        (_target, _full, _work, _lock, _madeParents) = (target, full, work, held, madeParents);

    /// <summary>True if the folder was not there: it is made beside its place.</summary>
    private bool IsFresh => _work.Root != _full;

    /// <summary>Begins, or says who is writing.</summary>
    public static (WritingSession? Session, Diagnostic? Busy) Open(OutputTarget target)
    {
        var full = Path.TrimEndingDirectorySeparator(Path.GetFullPath(target.Folder));
        while (true)
        {
            var isThere = Directory.Exists(full);
            var made = isThere ? [] : MakeParents(full);
            var work = new WorkFolder(isThere ? full : Beside(full, "fresh"));
            Directory.CreateDirectory(work.Root);
            if (WriterLock.TryTake(work.Root) is not { } held)
                return (
                    null,
                    new(target.Folder, null, $"{work.Writer()} is writing to this folder", "Wait until it is done, then run again.")
                );

            // Another run may have just made the folder.
            if (isThere || !Directory.Exists(full))
                return (new(target, full, work, held, made), null);
            held.Dispose();
            Directory.Delete(work.Root, recursive: true);
        }
    }

    /// <summary>Makes the files and writes them.</summary>
    public Written Write(Func<Produced> make, Run run)
    {
        if (IsFresh)
            ClearFresh();
        var notes = Recovery.Run(_work);
        var manifest = OutputManifest.Read(_work.Root);
        if (Refusals.OfKind(_target, manifest) is { } refusal)
            return Written.Nothing(refusal);
        _isKept = manifest is not null;
        _work.Begin(_target.Kind);
        var produced = make();
        if (!produced.Succeeded)
            return Written.Nothing(produced.Problems);
        var own = new OwnFiles(_work.Root, manifest, _work.IgnoresCase);
        if ((Refusals.OfFiles(_target, _work.Root, produced.Files, own) ?? produced.Objection?.Invoke(_full)) is { } foreign)
            return Written.Nothing(foreign);

        var staged = Staging.Of(_work, produced.Files, produced.IsMadeInTurn, run);
        if (Refusals.OfFiles(_target, _work.Root, produced.Files, own) is { } appeared)
            return Written.Nothing(appeared);
        var journal = FolderChange.Plan(_work, _target.Kind, staged, own);
        PutInPlace(journal, produced.Additions);
        return new(
            produced.Files.Count,
            [.. notes, .. produced.Notes, .. journal.Asides.Select(aside => new Note.KeptAside(aside.From, aside.To))],
            []
        )
        {
            Open = [.. produced.Open.Select(file => OwnPath.In(_full, file))],
            Remedies = produced.Remedies,
        };
    }

    /// <summary>
    /// Takes files of ours away and puts others in the places of theirs, all or nothing; what else the folder holds stays as it is.
    /// </summary>
    /// <exception cref="IOException">The folder holds no list of ours, or the files cannot be changed.</exception>
    public void Amend(IReadOnlyList<OutputFile> anew, IReadOnlySet<string> gone)
    {
        Recovery.Run(_work);
        var manifest = OutputManifest.Read(_work.Root) ?? throw new IOException($"{_full} holds nothing that ClassKit made");
        _isKept = true;
        _work.Begin(_target.Kind);
        var staged = Staging.Of(_work, anew, inTurn: true, Run.Unwatched);
        PutInPlace(FolderChange.Amend(_work, manifest, staged, gone), []);
    }

    public void Dispose()
    {
        // A journal that could be neither done nor taken back is the next run's.
        var isCutOff = !IsFresh && _work.HasJournal;
        if (!isCutOff)
            _work.Clear();
        if (_isKept || isCutOff)
        {
            _lock.Dispose();
            return;
        }

        // Nothing of ours is here: leave no trace.
        if (IsFresh)
            ClearFresh();
        _lock.Dispose();
        Try(() => File.Delete(Path.Combine(_work.Root, WriterLock.FileName)));
        if (IsFresh)
            Try(() => Directory.Delete(_work.Root));
        foreach (var parent in _madeParents)
            Try(() => Directory.Delete(parent));
    }

    private void PutInPlace(Journal journal, IReadOnlyList<Addition> additions)
    {
        var added = new Stack<Action>();
        try
        {
            foreach (var addition in additions)
                added.Push(Appending.Write(addition));
            _work.Commit(journal);
            new Commit(_work).Run(journal);
        }
        catch (Exception failure) when (failure is IOException and not CutOffException or UnauthorizedAccessException)
        {
            _work.Withdraw();
            while (added.TryPop(out var takeBack))
                takeBack();
            throw;
        }
        _work.Finish(journal);
        if (IsFresh)
        {
            // Windows renames no folder in which a file is open.
            if (OperatingSystem.IsWindows())
                _lock.Dispose();
            Directory.Move(_work.Root, _full);
        }
        _isKept = true;
    }

    /// <summary>What a killed run left of a folder that nobody has seen.</summary>
    private void ClearFresh()
    {
        foreach (var entry in Directory.EnumerateFileSystemEntries(_work.Root).ToList())
        {
            if (Path.GetFileName(entry) == WriterLock.FileName)
                continue;
            if (Place.At(entry) == Standing.Folder)
                Directory.Delete(entry, recursive: true);
            else
                File.Delete(entry);
        }
    }

    private static string Beside(string full, string what) =>
        Path.Combine(Path.GetDirectoryName(full)!, $".{Path.GetFileName(full)}.classkit-{what}");

    /// <summary>Makes the folders that a folder is to lie in.</summary>
    /// <returns>Those that were not there, innermost first.</returns>
    private static List<string> MakeParents(string full)
    {
        List<string> made = [];
        for (var at = Path.GetDirectoryName(full); at is not null && !Directory.Exists(at); at = Path.GetDirectoryName(at))
            made.Add(at);
        if (made.Count > 0)
            Directory.CreateDirectory(made[0]);
        return made;
    }

    private static void Try(Action tidy)
    {
        try
        {
            tidy();
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            // The next run will.
        }
    }
}
