using ClassKit.UseCases.Output.Writing;

namespace ClassKit.UseCases.Erasing;

/// <summary>A folder that holds files of ours, by its list of them.</summary>
/// <param name="Root">Where it is, in full.</param>
/// <param name="Files">The list.</param>
internal sealed record OwnOutput(string Root, OwnFiles Files)
{
    /// <summary>What made all that is on record of one student.</summary>
    public const string OfOneStudent = "show";

    /// <summary>What made tables of the whole record, which hang together: they are made once more, and never changed.</summary>
    public const string OfWholeRecord = "write-out";

    /// <summary>What made them.</summary>
    public required string Kind { get; init; }

    /// <summary>Those at or below a folder, whose lists are as we left them; the inner ones first.</summary>
    public static IReadOnlyList<OwnOutput> In(IEnumerable<string> files)
    {
        List<OwnOutput> found = [];
        foreach (
            var root in files
                .Where(file => Path.GetFileName(file) == OutputManifest.FileName)
                .Select(file => Path.GetDirectoryName(file)!)
                .OrderByDescending(root => root.Length)
        )
        {
            if (OutputFolder.Settle(root) is null && List(root) is { } manifest)
                found.Add(new(root, new(root, manifest, ignoresCase: false)) { Kind = manifest.Kind });
        }
        return found;
    }

    private static OutputManifest? List(string root)
    {
        try
        {
            return OutputManifest.Read(root);
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException or InvalidDataException)
        {
            // Files that nobody can tell to be ours are the instructor's.
            return null;
        }
    }

    /// <summary>What the list calls a file; null for one that is not ours.</summary>
    public string? PathOf(string file) => Path.GetRelativePath(Root, file).Replace('\\', '/') is var path && Files.Has(path) ? path : null;
}
