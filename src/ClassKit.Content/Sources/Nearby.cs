using ClassKit.Content.Wording;

namespace ClassKit.Content.Sources;

/// <summary>What may have been meant by a path that leads nowhere.</summary>
internal static class Nearby
{
    public static string? Files(string path) => Advice(path, Directory.EnumerateFiles);

    public static string? Folders(string path) => Advice(path, Directory.EnumerateDirectories);

    private static string? Advice(string path, Func<string, IEnumerable<string>> siblings)
    {
        var folder = Path.GetDirectoryName(Path.TrimEndingDirectorySeparator(Path.GetFullPath(path)));
        if (folder is null || !Directory.Exists(folder))
            return null;
        var names = siblings(folder).Select(sibling => Path.GetFileName(sibling)).Order(StringComparer.Ordinal).ToList();
        return NearestWord.To(Path.GetFileName(Path.TrimEndingDirectorySeparator(path)), names) is { } nearest ? $"Did you mean {nearest}?" : null;
    }
}
