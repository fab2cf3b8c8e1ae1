using ClassKit.Content.Sources;

namespace ClassKit.Desk.Texts;

/// <summary>The files of this machine, one of them as it would be: what a change breaks is known before it is written.</summary>
/// <param name="changed">The file, in full.</param>
/// <param name="content">What would be in it.</param>
internal sealed class ChangedTree(string changed, byte[] content) : ISourceTree
{
    public SourceKind At(string path) => Full(path) == changed ? SourceKind.File : PathTree.Instance.At(path);

    public IReadOnlyList<string> Files(string folder) => PathTree.Instance.Files(folder);

    public IReadOnlyList<string> Folders(string folder) => PathTree.Instance.Folders(folder);

    public Stream Open(string path) => Full(path) == changed ? new MemoryStream(content, writable: false) : PathTree.Instance.Open(path);

    public string Full(string path) => PathTree.Instance.Full(path);
}
