namespace ClassKit.UseCases;

/// <summary>The list, kept in every output folder, of what ClassKit wrote there, so that it replaces its own files and nobody else's.</summary>
/// <param name="Kind">The command.</param>
/// <param name="Files">Paths within the folder, with forward slashes, sorted.</param>
internal sealed record OutputManifest(string Kind, IReadOnlyList<string> Files)
{
    public const string FileName = ".classkit-files";

    private const string KindLabel = "written by: classkit ";

    public static OutputManifest Of(string kind, IReadOnlyList<OutputFile> files) =>
        new(kind, [.. files.Select(file => file.Path).Order(StringComparer.Ordinal)]);

    /// <summary>The folder's manifest; null if it has none.</summary>
    public static OutputManifest? Read(string folder)
    {
        var path = Path.Combine(folder, FileName);
        if (!File.Exists(path)) return null;
        var lines = File.ReadAllLines(path);
        return lines is [var first, .. var files] && first.StartsWith(KindLabel, StringComparison.Ordinal)
            ? new(first[KindLabel.Length..], files)
            : null;
    }

    public void Write(string folder) =>
        File.WriteAllText(Path.Combine(folder, FileName), string.Join('\n', [KindLabel + Kind, .. Files]) + "\n");
}
