using ClassKit.Notes;

namespace ClassKit.UseCases.Output.Writing;

/// <summary>Makes good what a killed run left behind: finishes it if all its files were whole, else clears them away.</summary>
internal static class Recovery
{
    /// <summary>To be called with the folder's lock in hand.</summary>
    /// <returns>What the instructor should know.</returns>
    /// <exception cref="InvalidDataException">The journal is not one of ours.</exception>
    public static IReadOnlyList<Note> Run(WorkFolder work)
    {
        if (!work.IsThere)
            return [];
        if (!work.HasJournal)
        {
            work.Clear();
            return [];
        }
        var journal = work.ReadJournal();
        List<Note> notes = [new Note.Finished(journal.Command), .. Finish(work, journal)];
        work.Finish(journal);
        return notes;
    }

    /// <summary>Goes through the journal from the beginning; what had happened already happens no second time.</summary>
    private static IEnumerable<Note> Finish(WorkFolder work, Journal journal)
    {
        foreach (var folder in journal.Folders)
            Directory.CreateDirectory(Checked(work.Root, folder));
        foreach (var (from, to) in journal.Asides.Where(aside => Place.At(OwnPath.In(work.Root, aside.To)) != Standing.Nothing))
            yield return new Note.KeptAside(from, to);
        var commit = new Commit(work);
        foreach (var put in journal.Puts)
        {
            var staged = work.Staged(put.Staged);

            // Where the two have changed places already, the old file is staged.
            if (Digest.Of(staged) != put.Digest)
                continue;
            var target = Checked(work.Root, put.Path);
            if (Place.At(target) != Standing.Nothing && (put.Over is null || Digest.Of(target) != put.Over))
                yield return MoveAside(work.Root, put.Path);
            commit.Put(staged, target);
        }
        foreach (var removal in journal.Removals)
        {
            var path = Checked(work.Root, removal.Path);
            if (Place.At(path) == Standing.Nothing)
                continue;
            if (Digest.Of(path) == removal.Digest)
                File.Delete(path);
            else
                yield return MoveAside(work.Root, removal.Path);
        }
    }

    private static Note.KeptAside MoveAside(string root, string path)
    {
        var name = SetAside.NameFor(root, path);
        Place.Move(OwnPath.In(root, path), OwnPath.In(root, name));
        return new(path, name);
    }

    private static string Checked(string root, string path) =>
        OwnPath.Obstacle(root, path) is { } obstacle
            ? throw new IOException($"{obstacle} was a folder when the earlier run was cut off and is none now")
            : OwnPath.In(root, path);
}
