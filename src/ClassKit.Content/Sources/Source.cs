using System.Diagnostics.CodeAnalysis;
using ClassKit.Content.Diagnostics;

namespace ClassKit.Content.Sources;

/// <summary>A file or folder of authored content: which library reads it, and where it is.</summary>
/// <param name="Library">Reads it.</param>
/// <param name="Path">As the user named it, or below what the user named.</param>
public sealed record Source(Library Library, string Path)
{
    /// <summary>A path alone means what a user's path names, as it is now.</summary>
    [return: NotNullIfNotNull(nameof(path))]
    public static implicit operator Source?(string? path) => path is null ? null : Named(path);

    /// <summary>What a user's path names, as it is now: a file or folder of this machine, or one that ships.</summary>
    public static Source Named(string path)
    {
        ArgumentNullException.ThrowIfNull(path);
        return Library.OfPaths().At(path);
    }

    /// <summary>The path as messages show it.</summary>
    internal string Shown => ContentPath.Shown(Path);

    /// <summary>The last step of the path, which a path such as <c>.</c> does not show.</summary>
    internal string Name => System.IO.Path.GetFileName(Library.Tree.Full(Path));

    /// <summary>The folder that it lies in.</summary>
    internal Source Folder => At(System.IO.Path.GetDirectoryName(Library.Tree.Full(Path)) ?? "");

    internal bool IsFile => Library.Tree.At(Path) == SourceKind.File;

    internal bool IsFolder => Library.Tree.At(Path) == SourceKind.Folder;

    /// <summary>Another of the same library.</summary>
    internal Source At(string path) => new(Library, path);

    /// <summary>One in this folder.</summary>
    internal Source In(string name) => At(System.IO.Path.Combine(Path, name));

    /// <summary>The model of it, made the first time that it is asked for.</summary>
    internal Reading<T> Once<T>(Func<Reading<T>> read)
        where T : class => Library.Once(Path, read);
}
