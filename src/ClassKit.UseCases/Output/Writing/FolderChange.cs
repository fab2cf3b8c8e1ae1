namespace ClassKit.UseCases.Output.Writing;

/// <summary>Works out what is to happen to a folder: which files are put, which are ours to remove, which the instructor changed.</summary>
internal static class FolderChange
{
    /// <summary>What turns the files that a folder holds of ours into the staged ones.</summary>
    /// <param name="work">Where they are staged; the new list is staged here too.</param>
    /// <param name="kind">The command.</param>
    /// <param name="staged">The path of every new file, its name in the work folder and its digest.</param>
    /// <param name="own">The files of ours that are there.</param>
    public static Journal Plan(WorkFolder work, string kind, IReadOnlyList<(string Path, string Name, string Digest)> staged, OwnFiles own)
    {
        List<Journal.Aside> asides = [];
        List<Journal.Put> puts = [];
        List<Journal.Removal> removals = [];
        foreach (var (path, name, digest) in staged)
        {
            var (old, isChanged) = own.Has(path) ? own.At(path) : (null, false);
            if (isChanged)
                asides.Add(new(path, SetAside.NameFor(work.Root, path)));

            // What is the same already stays as it is.
            if (old == digest)
                continue;
            puts.Add(new(name, path, digest, old));
            if (old is not null)
                KeepMode(OwnPath.In(work.Root, path), work.Staged(name));
        }

        var wanted = staged.Select(file => file.Path).ToHashSet(own.Comparer);
        foreach (var path in own.Paths.Where(path => !wanted.Contains(path)))
        {
            var (old, isChanged) = own.At(path);
            if (isChanged)
                asides.Add(new(path, SetAside.NameFor(work.Root, path)));
            else if (old is not null)
                removals.Add(new(path, old));
        }

        var needed = staged.SelectMany(file => OwnPath.Parents(file.Path)).ToHashSet(own.Comparer);
        List<string> made =
        [
            .. needed.Where(folder => Place.At(OwnPath.In(work.Root, folder)) == Standing.Nothing).Order(StringComparer.Ordinal),
        ];
        puts.Add(
            List(
                work,
                new(kind, [.. staged.Select(file => new OwnFile(file.Path, file.Digest))], [.. made, .. own.Folders.Where(needed.Contains)])
            )
        );
        return new(
            kind,
            made,
            asides,
            puts,
            removals,
            [.. own.Folders.Where(folder => !needed.Contains(folder)).OrderDescending(StringComparer.Ordinal)]
        );
    }

    /// <summary>
    /// What takes some files of a folder away, whatever was done to them since, and puts others in the places of theirs; all others stay as
    /// they are.
    /// </summary>
    /// <param name="work">Where the new ones are staged; the new list is staged here too.</param>
    /// <param name="before">The list as it is.</param>
    /// <param name="staged">The path of every new file, its name in the work folder and its digest.</param>
    /// <param name="gone">The paths of those to take away.</param>
    public static Journal Amend(
        WorkFolder work,
        OutputManifest before,
        IReadOnlyList<(string Path, string Name, string Digest)> staged,
        IReadOnlySet<string> gone
    )
    {
        string? There(string path) => Digest.Of(OwnPath.In(work.Root, path));
        foreach (var (path, name, _) in staged.Where(file => There(file.Path) is not null))
            KeepMode(OwnPath.In(work.Root, path), work.Staged(name));
        var put = staged.Select(file => file.Path).ToHashSet(StringComparer.Ordinal);
        var kept = before
            .Files.Where(file => !gone.Contains(file.Path) && !put.Contains(file.Path))
            .Select(file => file with { Digest = file.Digest ?? There(file.Path) })
            .Where(file => file.Digest is not null);
        return new(
            before.Kind,
            [],
            [],
            [
                .. staged.Select(file => new Journal.Put(file.Name, file.Path, file.Digest, There(file.Path))),
                List(work, before with { Files = [.. kept, .. staged.Select(file => new OwnFile(file.Path, file.Digest))] }),
            ],
            [
                .. gone.Where(path => There(path) is not null)
                    .Order(StringComparer.Ordinal)
                    .Select(path => new Journal.Removal(path, There(path)!)),
            ],
            []
        );
    }

    /// <summary>The new list of a folder's files, staged.</summary>
    private static Journal.Put List(WorkFolder work, OutputManifest manifest)
    {
        var list = work.Stage(stream => stream.Write(System.Text.Encoding.UTF8.GetBytes(manifest.Text())));
        return new(list.Name, OutputManifest.FileName, list.Digest, Digest.Of(Path.Combine(work.Root, OutputManifest.FileName)));
    }

    /// <summary>A file that the instructor made private stays so when it is replaced.</summary>
    private static void KeepMode(string old, string next)
    {
        if (!OperatingSystem.IsWindows())
            File.SetUnixFileMode(next, File.GetUnixFileMode(old));
    }
}
