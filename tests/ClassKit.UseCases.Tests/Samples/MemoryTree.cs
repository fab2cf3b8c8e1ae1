using ClassKit.Content.Sources;

namespace ClassKit.UseCases.Tests.Samples;

/// <summary>Files in memory, such as those that somebody hands over or is still writing.</summary>
internal sealed class MemoryTree : ISourceTree
{
    private readonly Dictionary<string, byte[]> _files;

    /// <summary>A tree of these files.</summary>
    /// <param name="files">By path, with forward slashes and without one at the beginning: <c>lessons/popovers/lesson.md</c>.</param>
    public MemoryTree(IEnumerable<KeyValuePair<string, byte[]>> files)
    {
        ArgumentNullException.ThrowIfNull(files);
        _files = files.ToDictionary(file => Full(file.Key), file => file.Value, StringComparer.Ordinal);
    }

    public SourceKind At(string path)
    {
        var full = Full(path);
        return _files.ContainsKey(full) ? SourceKind.File : full.Length == 0 || Below(full).Any() ? SourceKind.Folder : SourceKind.Nothing;
    }

    public IReadOnlyList<string> Files(string folder) => Sorted(Below(Full(folder)).Where(rest => !rest.Contains('/', StringComparison.Ordinal)));

    public IReadOnlyList<string> Folders(string folder) => Sorted(Below(Full(folder)).Where(rest => rest.Contains('/', StringComparison.Ordinal)).Select(rest => rest[..rest.IndexOf('/', StringComparison.Ordinal)]));

    public Stream Open(string path) => _files.TryGetValue(Full(path), out var bytes) ? new MemoryStream(bytes, writable: false) : throw new FileNotFoundException("There is no such file", path);

    public string Full(string path)
    {
        ArgumentNullException.ThrowIfNull(path);
        List<string> steps = [];
        foreach (var step in path.Replace('\\', '/').Split('/', StringSplitOptions.RemoveEmptyEntries))
        {
            if (step == ".." && steps.Count > 0) steps.RemoveAt(steps.Count - 1);
            else if (step is not ("." or "..")) steps.Add(step);
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
