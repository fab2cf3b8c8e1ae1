using ClassKit.Content.Wording;

namespace ClassKit.Content.Sources;

/// <summary>What may have been meant by a path that leads nowhere.</summary>
internal static class Nearby
{
    public static string? Files(Source source) => Advice(source, source.Library.Tree.Files);

    public static string? Folders(Source source) => Advice(source, source.Library.Tree.Folders);

    private static string? Advice(Source source, Func<string, IReadOnlyList<string>> names)
    {
        if (Shipped.Tree.At(source.Path) != SourceKind.Nothing) return $"Name it `{Shipped.Scheme}/{source.Shown}` if you mean the one that ships.";
        var folder = source.Folder;
        return folder.IsFolder && NearestWord.To(source.Name, names(folder.Path)) is { } nearest ? $"Did you mean {nearest}?" : null;
    }
}
