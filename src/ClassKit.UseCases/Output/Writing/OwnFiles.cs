namespace ClassKit.UseCases.Output.Writing;

/// <summary>The files of ours that a folder holds, as its list says, and whether they are still as they were written.</summary>
internal sealed class OwnFiles
{
    private readonly string _root;
    private readonly Dictionary<string, OwnFile> _files;
    private readonly DateTime _listed;

    public OwnFiles(string root, OutputManifest? manifest, bool ignoresCase)
    {
        _root = root;
        Comparer = ignoresCase ? StringComparer.OrdinalIgnoreCase : StringComparer.Ordinal;
        _files = (manifest?.Files ?? []).DistinctBy(file => file.Path, Comparer).ToDictionary(file => file.Path, Comparer);
        _listed = File.GetLastWriteTimeUtc(Path.Combine(root, OutputManifest.FileName));
        Folders = manifest?.Folders ?? [];
    }

    public StringComparer Comparer { get; }

    public IEnumerable<string> Paths => _files.Keys;

    /// <summary>The folders that we made.</summary>
    public IReadOnlyList<string> Folders { get; }

    public bool Has(string path) => _files.ContainsKey(path);

    /// <summary>
    /// What stands at a path of ours: its digest if it is as we wrote it, and whether the instructor changed it. Neither if nothing is
    /// there.
    /// </summary>
    public (string? Digest, bool IsChanged) At(string path)
    {
        var full = OwnPath.In(_root, path);

        // What lies behind a link is not ours.
        if (OwnPath.Obstacle(_root, path) is not null || Place.At(full) == Standing.Nothing)
            return (null, false);
        var digest = Digest.Of(full);
        return digest is not null && IsAsWritten(_files[path], digest, full) ? (digest, false) : (null, true);
    }

    /// <summary>Lists of the first version have no digests, but were written last.</summary>
    private bool IsAsWritten(OwnFile file, string digest, string full) =>
        file.Digest is { } written ? written == digest : File.GetLastWriteTimeUtc(full) <= _listed;
}
