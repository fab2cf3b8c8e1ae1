using ClassKit.Content.Diagnostics;

namespace ClassKit.Content.Sources;

/// <summary>
/// What one run reads from a source tree: each file is opened once and each model made once, however often it is asked for.
/// </summary>
/// <remarks>A new library sees what has changed since. Not for several threads at once.</remarks>
public sealed class Library(ISourceTree tree)
{
    private readonly Dictionary<string, byte[]?> _wholes = new(StringComparer.Ordinal);
    private readonly HashSet<string> _linked = new(StringComparer.Ordinal);
    private readonly Dictionary<string, SourceBytes> _files = new(StringComparer.Ordinal);
    private readonly Dictionary<(Type Model, string Full), object> _models = [];

    /// <summary>Where files come from.</summary>
    public ISourceTree Tree => tree;

    /// <summary>A library of what a user's paths name: on this machine, or inside this program.</summary>
    public static Library OfPaths() => new(PathTree.Instance);

    /// <summary>A file or folder of this library.</summary>
    public Source At(string path) => new(this, path);

    /// <summary>True if anything asked for what is in a file.</summary>
    internal bool HasRead(string path) => _files.ContainsKey(tree.Full(path)) || _wholes.ContainsKey(tree.Full(path));

    /// <summary>The files that were read so far, in full.</summary>
    public IReadOnlyCollection<string> Read => [.. _files.Keys.Concat(_wholes.Keys).Order(StringComparer.Ordinal)];

    /// <summary>All that is in a file that is no text; null if it cannot be opened or there is more of it.</summary>
    internal byte[]? Whole(string path, int most)
    {
        var full = tree.Full(path);
        if (!_wholes.TryGetValue(full, out var known))
            _wholes[full] = known = SourceBytes.Whole(tree, path, most);
        return known;
    }

    /// <summary>True if another file leads to a file.</summary>
    public bool IsLinked(string path) => _linked.Contains(tree.Full(path));

    /// <summary>Notes that another file leads to a file.</summary>
    internal void Link(string path) => _linked.Add(tree.Full(path));

    /// <summary>What is in a file that is there.</summary>
    internal SourceBytes Bytes(string path)
    {
        var full = tree.Full(path);
        return _files.TryGetValue(full, out var known) ? known : _files[full] = SourceBytes.Read(tree, path);
    }

    /// <summary>The model of a file or folder, made the first time that it is asked for.</summary>
    internal Reading<T> Once<T>(string path, Func<Reading<T>> read)
        where T : class
    {
        var key = (typeof(T), tree.Full(path));
        if (_models.TryGetValue(key, out var known))
            return (Reading<T>)known;
        var reading = read();
        _models[key] = reading;
        return reading;
    }

    /// <summary>One and the same for all who come by it in their own ways: the first that was handed in under its name.</summary>
    internal T Shared<T>(string name, T made)
        where T : class
    {
        var key = (typeof(T), name);
        if (_models.TryGetValue(key, out var known))
            return (T)known;
        _models[key] = made;
        return made;
    }
}
