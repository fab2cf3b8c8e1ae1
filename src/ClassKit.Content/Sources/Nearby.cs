using ClassKit.Content.Wording;

namespace ClassKit.Content.Sources;

/// <summary>What may have been meant by a path that leads nowhere.</summary>
internal static class Nearby
{
    public static string? Files(Source source) => OtherEnding(source) ?? OtherFolder(source) ?? Advice(source, source.Library.Tree.Files);

    public static string? Folders(Source source) => Advice(source, source.Library.Tree.Folders);

    /// <summary>An editor puts its own ending behind a name: <c>how_wet.md.txt</c>.</summary>
    private static string? OtherEnding(Source source) =>
        source.Folder.IsFolder && source.Library.Tree.Files(source.Folder.Path).FirstOrDefault(name => name.StartsWith(source.Name + ".", StringComparison.OrdinalIgnoreCase)) is { } longer
            ? $"There is `{longer}`: rename it to `{source.Name}`. If you see no `{Path.GetExtension(longer)}`, let your file manager show the endings of file names."
            : null;

    /// <summary>The folder that is named is not there, and one with nearly its name has the file.</summary>
    private static string? OtherFolder(Source source)
    {
        var (folder, above) = (source.Folder, source.Folder.Folder);
        return !folder.IsFolder && above.IsFolder && NearestWord.To(folder.Name, source.Library.Tree.Folders(above.Path)) is { } near && above.In(near).In(source.Name).IsFile
            ? $"It is in the folder `{near}`: rename that to `{folder.Name}`, or write `{near}/{source.Name}` here."
            : null;
    }

    private static string? Advice(Source source, Func<string, IReadOnlyList<string>> names)
    {
        if (Shipped.Tree.At(source.Path) != SourceKind.Nothing) return $"Name it `{Shipped.Scheme}/{source.Shown}` if you mean the one that ships.";
        var folder = source.Folder;
        return folder.IsFolder && NearestWord.To(source.Name, names(folder.Path)) is { } nearest ? $"Did you mean {nearest}?" : null;
    }
}
