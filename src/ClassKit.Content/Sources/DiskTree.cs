namespace ClassKit.Content.Sources;

/// <summary>The files of this machine, as the user's paths name them.</summary>
public sealed class DiskTree : ISourceTree
{
    /// <summary>No hidden folders, none that cannot be read, and no links, which may lead in circles.</summary>
    private static readonly EnumerationOptions Visible = new()
    {
        AttributesToSkip = FileAttributes.Hidden | FileAttributes.System | FileAttributes.ReparsePoint,
    };

    private DiskTree() { }

    /// <summary>The one there is.</summary>
    public static DiskTree Instance { get; } = new();

    /// <inheritdoc/>
    public SourceKind At(string path) =>
        Directory.Exists(path.Length == 0 ? "." : path) ? SourceKind.Folder
        : File.Exists(path) ? SourceKind.File
        : SourceKind.Nothing;

    /// <inheritdoc/>
    public IReadOnlyList<string> Files(string folder) => Names(Directory.EnumerateFiles(folder, "*", Visible));

    /// <inheritdoc/>
    public IReadOnlyList<string> Folders(string folder) => Names(Directory.EnumerateDirectories(folder, "*", Visible));

    /// <inheritdoc/>
    public Stream Open(string path) => File.OpenRead(path);

    /// <inheritdoc/>
    public string Full(string path) => Path.TrimEndingDirectorySeparator(Path.GetFullPath(path.Length == 0 ? "." : path));

    private static IReadOnlyList<string> Names(IEnumerable<string> paths) =>
        [.. paths.Select(path => Path.GetFileName(path)).Order(StringComparer.Ordinal)];
}
