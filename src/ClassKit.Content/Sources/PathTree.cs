namespace ClassKit.Content.Sources;

/// <summary>
/// Whatever a user's path names: what ships where it begins with <see cref="Shipped.Scheme"/>, else a file or folder of this machine.
/// </summary>
public sealed class PathTree : ISourceTree
{
    private PathTree() { }

    /// <summary>The one there is.</summary>
    public static PathTree Instance { get; } = new();

    /// <inheritdoc/>
    public SourceKind At(string path)
    {
        var (tree, inside) = Of(path);
        return tree.At(inside);
    }

    /// <inheritdoc/>
    public IReadOnlyList<string> Files(string folder)
    {
        var (tree, inside) = Of(folder);
        return tree.Files(inside);
    }

    /// <inheritdoc/>
    public IReadOnlyList<string> Folders(string folder)
    {
        var (tree, inside) = Of(folder);
        return tree.Folders(inside);
    }

    /// <inheritdoc/>
    public Stream Open(string path)
    {
        var (tree, inside) = Of(path);
        return tree.Open(inside);
    }

    /// <inheritdoc/>
    public string Full(string path)
    {
        var (tree, inside) = Of(path);
        return tree == Shipped.Tree ? $"{Shipped.Scheme}/{tree.Full(inside)}".TrimEnd('/') : tree.Full(inside);
    }

    private static (ISourceTree Tree, string Inside) Of(string path)
    {
        ArgumentNullException.ThrowIfNull(path);
        return path.StartsWith(Shipped.Scheme, StringComparison.Ordinal)
            ? (Shipped.Tree, path[Shipped.Scheme.Length..])
            : (DiskTree.Instance, path);
    }
}
