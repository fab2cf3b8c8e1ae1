using ClassKit.Content.Diagnostics;

namespace ClassKit.UseCases.Output.Writing;

/// <summary>Folders that ClassKit does not write to, each with the way out.</summary>
internal static class Refusals
{
    private const string NameANew = "Name a new folder, or one that ClassKit made.";

    /// <summary>Why a folder is refused before anything in it is touched; null if it is not.</summary>
    public static Diagnostic? Of(OutputTarget target)
    {
        var full = Path.TrimEndingDirectorySeparator(Path.GetFullPath(target.Folder));
        if (Place.At(full) == Standing.Link)
            return new(
                target.Folder,
                null,
                $"This is a link that leads to {new FileInfo(full).LinkTarget}",
                "Name the folder itself: what is written through a link lands where nobody looks for it."
            );
        if (FileInTheWay(full) is { } file)
            return new(
                target.Folder,
                null,
                $"{(file == full ? "This" : file)} is a file",
                "Name a folder to write to, or one that does not exist yet."
            );

        var real = Place.Real(full);
        return Protected(target.Folder, real)
            ?? OfKind(target, OutputManifest.Read(full))
            ?? target
                .Inputs.OfType<string>()
                .Where(input => input.Length > 0)
                .Select(input => Entangled(target.Folder, real, input))
                .FirstOrDefault(refusal => refusal is not null)
            ?? Strange(target.Folder, full);
    }

    /// <summary>Why a folder that has our list is refused to a command; null if it is not.</summary>
    public static Diagnostic? OfKind(OutputTarget target, OutputManifest? manifest) =>
        manifest is null || manifest.Kind == target.Kind
            ? null
            : new(
                target.Folder,
                null,
                $"This folder was written by `{manifest.Kind}`",
                $"Name another folder for `{target.Kind}`, so that neither overwrites the other."
            );

    /// <summary>Why files cannot go where they should: something stands there that ClassKit did not write.</summary>
    public static Diagnostic? OfFiles(OutputTarget target, string root, IReadOnlyList<OutputFile> files, OwnFiles own)
    {
        foreach (var file in files)
        {
            if (!OwnPath.IsSound(file.Path))
                return new(
                    target.Folder,
                    null,
                    $"`{file.Path}` is no name for a file of this folder",
                    "Nothing is written outside of it. Change the id or the name that it comes from."
                );
            if (OwnPath.Obstacle(root, file.Path) is { } obstacle)
                return new(
                    target.Folder,
                    null,
                    $"{obstacle} is no folder, and {file.Path} must go into it",
                    "Move it away or name another folder."
                );
            if (!own.Has(file.Path) && Place.At(OwnPath.In(root, file.Path)) != Standing.Nothing)
                return new(
                    target.Folder,
                    null,
                    $"{file.Path} is there already and was not written by `{target.Kind}`",
                    "Move it away or name another folder."
                );
        }
        return files.GroupBy(file => file.Path, own.Comparer).FirstOrDefault(group => group.Count() > 1) is { } same
            ? new(
                target.Folder,
                null,
                $"{string.Join(" and ", same.Select(file => file.Path))} would be one file here",
                "Change one of the ids that they come from."
            )
            : null;
    }

    /// <summary>The folder itself or one of its parents, if that is a file.</summary>
    private static string? FileInTheWay(string full)
    {
        for (var path = full; !string.IsNullOrEmpty(path); path = Path.GetDirectoryName(path))
        {
            if (File.Exists(path))
                return path;
        }
        return null;
    }

    private static Diagnostic? Protected(string folder, string real)
    {
        if (real == Path.GetPathRoot(real))
            return new(folder, null, "This is the root of a disk", NameANew) { Remedy = Remedy.NameOutputFolder };
        (string What, string Path)[] places =
        [
            ("current folder", Environment.CurrentDirectory),
            ("home folder", Environment.GetFolderPath(Environment.SpecialFolder.UserProfile)),
        ];
        foreach (var (what, path) in places.Where(place => place.Path.Length > 0))
        {
            var there = Place.Real(path);
            if (!Place.IsWithin(there, real))
                continue;
            return new(folder, null, there == real ? $"This is the {what}" : $"The {what} lies in it", NameANew)
            {
                Remedy = Remedy.NameOutputFolder,
            };
        }
        return null;
    }

    private static Diagnostic? Entangled(string folder, string real, string input)
    {
        var there = Place.Real(input);
        if (Place.IsWithin(there, real))
            return new(folder, null, there == real ? $"It is also read: {input}" : $"{input}, which is read, lies in it", NameANew)
            {
                Remedy = Remedy.NameOutputFolder,
            };
        return Place.IsWithin(real, there)
            ? new(folder, null, $"It lies in {input}, which is read", NameANew) { Remedy = Remedy.NameOutputFolder }
            : null;
    }

    /// <summary>A folder with something in it and without our list is somebody's own.</summary>
    private static Diagnostic? Strange(string folder, string full)
    {
        if (
            !Directory.Exists(full)
            || new WorkFolder(full).HasJournal
            || Place.At(Path.Combine(full, OutputManifest.FileName)) != Standing.Nothing
        )
            return null;
        var found = Directory
            .EnumerateFileSystemEntries(full)
            .Select(Path.GetFileName)
            .Order(StringComparer.Ordinal)
            .FirstOrDefault(name => name is not (WriterLock.FileName or WorkFolder.FolderName));
        return found is null
            ? null
            : new(
                folder,
                null,
                $"{found} is there already, and the folder has no list of files that ClassKit wrote",
                "Name a new or an empty folder: ClassKit writes into no folder of yours."
            );
    }
}
