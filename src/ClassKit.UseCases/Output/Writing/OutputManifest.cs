namespace ClassKit.UseCases.Output.Writing;

/// <summary>
/// The list, kept in every output folder, of what ClassKit wrote there, so that it replaces its own files and nobody else's.
/// </summary>
/// <param name="Kind">The command.</param>
/// <param name="Files">What it wrote.</param>
/// <param name="Folders">The folders that it made for them, within the output folder.</param>
internal sealed record OutputManifest(string Kind, IReadOnlyList<OwnFile> Files, IReadOnlyList<string> Folders)
{
    public const string FileName = ".classkit-files";

    private const string KindLabel = "written by: classkit ";
    private const string DigestsLabel = "digests: sha-256";
    private const string FolderMark = "-";
    private const string Gap = "  ";
    private const int MostBytes = 64 << 20;

    /// <summary>The folder's manifest; null if it has none.</summary>
    /// <exception cref="InvalidDataException">There is one that we did not write.</exception>
    public static OutputManifest? Read(string folder)
    {
        var path = Path.Combine(folder, FileName);
        var standing = Place.At(path);
        if (standing == Standing.Nothing)
            return null;
        if (standing != Standing.File || new FileInfo(path).Length is 0 or > MostBytes)
            throw Damaged();
        return Parse(File.ReadAllLines(path)) ?? throw Damaged();
    }

    /// <summary>The list as it stands in the file, for <c>sha256sum</c> to check too.</summary>
    public string Text() =>
        string.Join(
            '\n',
            [
                KindLabel + Kind,
                DigestsLabel,
                .. Files.OrderBy(file => file.Path, StringComparer.Ordinal).Select(file => file.Digest + Gap + file.Path),
                .. Folders.Order(StringComparer.Ordinal).Select(folder => $"{FolderMark}{Gap}{folder}/"),
            ]
        ) + "\n";

    private static OutputManifest? Parse(string[] lines)
    {
        if (lines is not [var first, ..] || !first.StartsWith(KindLabel, StringComparison.Ordinal))
            return null;
        var kind = first[KindLabel.Length..];

        // Lists of the first version name files only.
        var hasDigests = lines.Length > 1 && lines[1] == DigestsLabel;
        if (!hasDigests)
            return lines[1..].All(OwnPath.IsSound) ? new(kind, [.. lines[1..].Select(path => new OwnFile(path, null))], []) : null;

        List<OwnFile> files = [];
        List<string> folders = [];
        foreach (var line in lines[2..])
        {
            var (mark, path) = line.Split(Gap, 2) is [var before, var after] ? (before, after) : ("", "");
            if (mark == FolderMark && path.EndsWith('/') && OwnPath.IsSound(path[..^1]))
                folders.Add(path[..^1]);
            else if (Digest.IsOne(mark) && OwnPath.IsSound(path))
                files.Add(new(path, mark));
            else
                return null;
        }
        return new(kind, files, folders);
    }

    private static InvalidDataException Damaged() => new($"{FileName}, the list of what ClassKit wrote here, is not as ClassKit wrote it");
}
