namespace ClassKit.Content.Sources;

/// <summary>Files that are listed by path, wherever their bytes are: in memory, in this program, in an archive.</summary>
public sealed class ListedTree : ISourceTree
{
    private readonly Dictionary<string, Func<Stream>> _files;

    /// <summary>A tree of these files.</summary>
    /// <param name="files">By path, such as <c>lessons/popovers/lesson.md</c>: how each is opened from its beginning.</param>
    public ListedTree(IEnumerable<KeyValuePair<string, Func<Stream>>> files)
    {
        ArgumentNullException.ThrowIfNull(files);
        _files = files.ToDictionary(file => Full(file.Key), file => file.Value, StringComparer.Ordinal);
    }

    /// <summary>A tree of files in memory, such as those that somebody hands over or is still writing.</summary>
    public static ListedTree InMemory(IEnumerable<KeyValuePair<string, byte[]>> files) =>
        new(files.Select(file => KeyValuePair.Create<string, Func<Stream>>(file.Key, () => new MemoryStream(file.Value, writable: false))));

    /// <inheritdoc/>
    public SourceKind At(string path)
    {
        var full = Full(path);
        return _files.ContainsKey(full) ? SourceKind.File
            : full.Length == 0 || Below(full).Any() ? SourceKind.Folder
            : SourceKind.Nothing;
    }

    /// <inheritdoc/>
    public IReadOnlyList<string> Files(string folder) =>
        Sorted(Below(Full(folder)).Where(rest => !rest.Contains('/', StringComparison.Ordinal)));

    /// <inheritdoc/>
    public IReadOnlyList<string> Folders(string folder) =>
        Sorted(
            Below(Full(folder))
                .Where(rest => rest.Contains('/', StringComparison.Ordinal))
                .Select(rest => rest[..rest.IndexOf('/', StringComparison.Ordinal)])
        );

    /// <inheritdoc/>
    public Stream Open(string path) =>
        _files.TryGetValue(Full(path), out var open) ? open() : throw new FileNotFoundException("There is no such file", path);

    /// <inheritdoc/>
    public string Full(string path)
    {
        ArgumentNullException.ThrowIfNull(path);
        List<string> steps = [];
        foreach (var step in path.Replace('\\', '/').Split('/', StringSplitOptions.RemoveEmptyEntries))
        {
            if (step == ".." && steps.Count > 0)
                steps.RemoveAt(steps.Count - 1);
            else if (step is not ("." or ".."))
                steps.Add(step);
        }
        return string.Join('/', steps);
    }

    /// <summary>The paths below a folder, without the folder's own.</summary>
    private IEnumerable<string> Below(string full)
    {
        var start = full.Length == 0 ? "" : full + "/";
        return _files.Keys.Where(path => path.StartsWith(start, StringComparison.Ordinal)).Select(path => path[start.Length..]);
    }

    private static IReadOnlyList<string> Sorted(IEnumerable<string> names) => [.. names.Distinct().Order(StringComparer.Ordinal)];
}
