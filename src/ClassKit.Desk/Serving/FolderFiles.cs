namespace ClassKit.Desk.Serving;

/// <summary>
/// Files of a folder that ClassKit made, shown or given out: what is asked for is looked up among what lies there, and links lead nowhere.
/// </summary>
internal static class FolderFiles
{
    private static readonly EnumerationOptions Plain = new()
    {
        RecurseSubdirectories = true,
        AttributesToSkip = FileAttributes.Hidden | FileAttributes.System | FileAttributes.ReparsePoint,
    };

    /// <summary>The files at or below a folder by their paths in it, with forward slashes.</summary>
    public static IReadOnlyList<string> In(string folder) =>
        Directory.Exists(folder)
            ?
            [
                .. Directory
                    .EnumerateFiles(folder, "*", Plain)
                    .Select(file => Path.GetRelativePath(folder, file).Replace('\\', '/'))
                    .Where(path => path[0] != '.')
                    .Order(StringComparer.Ordinal),
            ]
            : [];

    /// <summary>Answers with one of them; pages are shown, anything else is to keep.</summary>
    public static Task Answer(Visit visit, string folder, string? asked)
    {
        if (In(folder).FirstOrDefault(path => path == asked) is not { } found)
            return visit.Nothing();
        var file = Path.Combine(folder, found);
        return found.EndsWith(".html", StringComparison.Ordinal)
            ? visit.ShowSheet(File.ReadAllText(file))
            : visit.Download(Path.GetFileName(found), "application/octet-stream", File.ReadAllBytes(file));
    }
}
