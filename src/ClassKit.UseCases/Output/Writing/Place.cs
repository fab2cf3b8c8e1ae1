namespace ClassKit.UseCases.Output.Writing;

/// <summary>Questions to the file system that never follow a link and never open what may not end.</summary>
internal static class Place
{
    /// <summary>What stands at a path.</summary>
    public static Standing At(string path)
    {
        var info = new FileInfo(path);
        if ((int)info.Attributes == -1)
            return Standing.Nothing;
        if (info.LinkTarget is not null)
            return Standing.Link;
        return info.Attributes.HasFlag(FileAttributes.Directory) ? Standing.Folder : Standing.File;
    }

    /// <summary>Gives whatever stands at a path another name, links themselves and not what they lead to.</summary>
    public static void Move(string from, string to)
    {
        if (At(from) == Standing.Folder)
            Directory.Move(from, to);
        else
            File.Move(from, to);
    }

    /// <summary>The path with every link on its way followed, also where its end does not exist yet.</summary>
    public static string Real(string path)
    {
        const int mostLinks = 40;
        var full = Path.GetFullPath(path);
        for (var links = 0; links < mostLinks; links++)
        {
            if (FirstLink(full) is not { } link)
                return Path.TrimEndingDirectorySeparator(full);
            var target = Path.Combine(Path.GetDirectoryName(link.Path)!, link.Target);
            full = Path.GetFullPath(Path.Combine(target, Path.GetRelativePath(link.Path, full)));
        }
        throw new IOException($"{path} leads through too many links");
    }

    /// <summary>True if a path is another or lies below it; both real.</summary>
    public static bool IsWithin(string path, string folder) =>
        path.Equals(folder, Comparison)
        || path.StartsWith(Path.TrimEndingDirectorySeparator(folder) + Path.DirectorySeparatorChar, Comparison)
        || folder == Path.GetPathRoot(path);

    private static StringComparison Comparison =>
        OperatingSystem.IsWindows() || OperatingSystem.IsMacOS() ? StringComparison.OrdinalIgnoreCase : StringComparison.Ordinal;

    private static (string Path, string Target)? FirstLink(string full)
    {
        var parents = new Stack<string>();
        for (var at = full; !string.IsNullOrEmpty(at); at = Path.GetDirectoryName(at))
            parents.Push(at);
        foreach (var at in parents)
        {
            if (new FileInfo(at).LinkTarget is { } target)
                return (at, target);
        }
        return null;
    }
}
