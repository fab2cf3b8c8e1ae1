using ClassKit.Content.Checking;
using ClassKit.Content.Classes;
using ClassKit.Content.Recognition;
using ClassKit.Content.Sources;

namespace ClassKit.UseCases.Erasing;

/// <summary>The class lists of a teaching folder.</summary>
internal static class ClassLists
{
    private static readonly string[] Endings = [".csv", ".tsv", ".xlsx", ".ods"];

    /// <summary>
    /// Those that a class or a term names, whatever they are called, and those that are called so, with what was a class's before; in full.
    /// </summary>
    /// <param name="folder">The folder, in full.</param>
    /// <param name="files">All files in it.</param>
    public static IReadOnlySet<string> In(string folder, IEnumerable<string> files) =>
        files.Where(IsCalledSo).Concat(Named(folder)).ToHashSet(StringComparer.Ordinal);

    /// <summary>Those that a class or a term of a folder names.</summary>
    public static IEnumerable<string> Named(string folder)
    {
        var library = Library.OfPaths();
        return ContentChecker
            .Recognised(library.At(folder))
            .Where(item => item.Kind is ContentKind.ClassProfile or ContentKind.Term)
            .Select(item => NamedRoster.Of(library.At(item.Path)))
            .OfType<Source>()
            .Select(list => Path.GetFullPath(list.Path));
    }

    private static bool IsCalledSo(string file) =>
        Path.GetFileName(file).Contains("roster", StringComparison.OrdinalIgnoreCase)
        && Endings.Contains(Path.GetExtension(file).ToLowerInvariant());
}
