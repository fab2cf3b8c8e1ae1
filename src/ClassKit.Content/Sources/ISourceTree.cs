namespace ClassKit.Content.Sources;

/// <summary>Where authored files are read from: folders on disk, or whatever else holds files by path.</summary>
public interface ISourceTree
{
    /// <summary>What stands at a path.</summary>
    SourceKind At(string path);

    /// <summary>The names of the files directly in a folder, without hidden ones and links, in the order of ordinal comparison.</summary>
    IReadOnlyList<string> Files(string folder);

    /// <summary>The names of the folders directly in a folder, without hidden ones and links, in the order of ordinal comparison.</summary>
    IReadOnlyList<string> Folders(string folder);

    /// <summary>Opens a file from its beginning.</summary>
    /// <exception cref="IOException">It cannot be opened.</exception>
    /// <exception cref="UnauthorizedAccessException">It may not be opened.</exception>
    Stream Open(string path);

    /// <summary>The path in full: the same for every way to write it.</summary>
    string Full(string path);
}
