using ClassKit.Content.Sources;

namespace ClassKit.UseCases.Tests.Samples;

/// <summary>Counts how often each file of another tree is opened.</summary>
internal sealed class CountingTree(ISourceTree tree) : ISourceTree
{
    private readonly Dictionary<string, int> _opened = new(StringComparer.Ordinal);

    public IReadOnlyDictionary<string, int> Opened => _opened;

    public SourceKind At(string path) => tree.At(path);

    public IReadOnlyList<string> Files(string folder) => tree.Files(folder);

    public IReadOnlyList<string> Folders(string folder) => tree.Folders(folder);

    public string Full(string path) => tree.Full(path);

    public Stream Open(string path)
    {
        _opened[Full(path)] = _opened.GetValueOrDefault(Full(path)) + 1;
        return tree.Open(path);
    }
}
