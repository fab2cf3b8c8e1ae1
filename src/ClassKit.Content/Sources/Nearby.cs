using ClassKit.Content.Wording;

namespace ClassKit.Content.Sources;

/// <summary>What may have been meant by a path that leads nowhere.</summary>
internal static class Nearby
{
    /// <summary>What word processors save by themselves. Another name makes no text of it.</summary>
    private static readonly string[] OfWordProcessors = [".docx", ".doc", ".odt", ".rtf", ".pages"];

    public static string? Files(Source source) =>
        WordProcessed(source) ?? OtherEnding(source) ?? OtherFolder(source) ?? Advice(source, source.Library.Tree.Files);

    public static string? Folders(Source source) => Advice(source, source.Library.Tree.Folders);

    private static string? WordProcessed(Source source) =>
        source.Folder.IsFolder
        && Path.GetExtension(source.Name) == ".md"
        && source
            .Library.Tree.Files(source.Folder.Path)
            .FirstOrDefault(name =>
                OfWordProcessors.Contains(Path.GetExtension(name), StringComparer.OrdinalIgnoreCase) && IsOf(name, source.Name)
            )
            is { } document
            ? $"There is `{document}`, a word processor's document: open it there, save it as plain text (.txt, letters UTF-8), and rename what was saved to `{source.Name}`."
            : null;

    private static bool IsOf(string document, string text) =>
        Path.GetFileNameWithoutExtension(document).Equals(text, StringComparison.OrdinalIgnoreCase)
        || Path.GetFileNameWithoutExtension(document).Equals(Path.GetFileNameWithoutExtension(text), StringComparison.OrdinalIgnoreCase);

    /// <summary>An editor puts its own ending behind a name: <c>how_wet.md.txt</c>.</summary>
    private static string? OtherEnding(Source source) =>
        source.Folder.IsFolder
        && source
            .Library.Tree.Files(source.Folder.Path)
            .FirstOrDefault(name => name.StartsWith(source.Name + ".", StringComparison.OrdinalIgnoreCase))
            is { } longer
            ? $"There is `{longer}`: rename it to `{source.Name}`. If you see no `{Path.GetExtension(longer)}`, let your file manager show the endings of file names."
            : null;

    /// <summary>The folder that is named is not there, and one with nearly its name has the file.</summary>
    private static string? OtherFolder(Source source)
    {
        var (folder, above) = (source.Folder, source.Folder.Folder);
        return
            !folder.IsFolder
            && above.IsFolder
            && NearestWord.To(folder.Name, source.Library.Tree.Folders(above.Path)) is { } near
            && above.In(near).In(source.Name).IsFile
            ? $"It is in the folder `{near}`: rename that to `{folder.Name}`, or write `{near}/{source.Name}` here."
            : null;
    }

    private static string? Advice(Source source, Func<string, IReadOnlyList<string>> names)
    {
        if (Shipped.Tree.At(source.Path) != SourceKind.Nothing)
            return $"Name it `{Shipped.Scheme}/{source.Shown}` if you mean the one that ships.";
        var folder = source.Folder;
        return folder.IsFolder && NearestWord.To(source.Name, names(folder.Path)) is { } nearest ? $"Did you mean {nearest}?" : null;
    }
}
