using ClassKit.Content.Checking;
using ClassKit.Content.Classes;
using ClassKit.Content.Recognition;
using ClassKit.Content.Sources;

namespace ClassKit.Desk.Folders;

/// <summary>The folder that a desk is opened on. Whatever a page names is looked up among what is found here: no path ever comes from a browser.</summary>
/// <param name="Root">In full.</param>
public sealed record TeachingFolder(string Root)
{
    /// <summary>Below it lie what was dealt, what came back and what was graded of it.</summary>
    public const string RoundsName = "rounds";

    /// <summary>Below it lie lesson packs that were kept.</summary>
    public const string PacksName = "packs";

    /// <summary>True for the invented class, in a folder that goes away with the desk.</summary>
    public bool IsLookRound { get; init; }

    /// <summary>What it is called.</summary>
    public string Name => IsLookRound ? "The invented class" : Path.GetFileName(Path.TrimEndingDirectorySeparator(Root));

    /// <summary>Every class, by its profile.</summary>
    public IReadOnlyList<ClassEntry> Classes()
    {
        var library = Library.OfPaths();
        return [.. Found(library).Where(item => item.Kind == ContentKind.ClassProfile).Select(item => new ClassEntry(KeyOf(item.Path), item.Path, ClassProfileReader.Read(library.At(item.Path)), RosterBeside(library, item.Path)))];
    }

    /// <summary>The class of a key; null if there is none.</summary>
    public ClassEntry? Class(string? key) => Classes().FirstOrDefault(entry => entry.Key == key);

    /// <summary>The instructor's own lessons, then those that ship.</summary>
    public IReadOnlyList<LessonEntry> Lessons()
    {
        var own = Found(Library.OfPaths()).Where(item => item.Kind == ContentKind.Lesson).Select(item => LessonEntry.Of(KeyOf(item.Path), item.Path)).ToList();
        return [.. own, .. LessonEntry.Shipped.Where(shipped => !own.Exists(lesson => lesson.Key == shipped.Key))];
    }

    /// <summary>The lesson of a key; null if there is none.</summary>
    public LessonEntry? Lesson(string? key) => Lessons().FirstOrDefault(entry => entry.Key == key);

    /// <summary>The rounds of a class, the latest first.</summary>
    public IReadOnlyList<Round> Rounds(ClassEntry known)
    {
        ArgumentNullException.ThrowIfNull(known);
        return Directory.Exists(RoundsOf(known)) ? [.. Directory.EnumerateDirectories(RoundsOf(known)).Select(folder => new Round(known.Key, folder)).Where(round => round.Number > 0).OrderByDescending(round => round.Number)] : [];
    }

    /// <summary>A round of a class; null if there is none of that name.</summary>
    public Round? Round(ClassEntry known, string? name) => Rounds(known).FirstOrDefault(round => round.Name == name);

    /// <summary>Where the next round of a class goes.</summary>
    /// <param name="known">The class.</param>
    /// <param name="what">What is dealt, in a word or two.</param>
    public Round NewRound(ClassEntry known, string what)
    {
        ArgumentNullException.ThrowIfNull(known);
        return new(known.Key, Path.Combine(RoundsOf(known), Folders.Round.NameOf((Rounds(known) is [var last, ..] ? last.Number : 0) + 1, what)));
    }

    /// <summary>Where the pack of a lesson for a class is kept.</summary>
    public string PackOf(ClassEntry known, LessonEntry lesson)
    {
        ArgumentNullException.ThrowIfNull(known);
        ArgumentNullException.ThrowIfNull(lesson);
        return Path.Combine(Root, PacksName, known.Key, lesson.Key);
    }

    private string RoundsOf(ClassEntry known) => Path.Combine(Root, RoundsName, known.Key);

    private IEnumerable<CheckedItem> Found(Library library) => ContentChecker.Recognised(library.At(Root), RoundsName, PacksName);

    /// <summary>The path below the folder, made one step of an address.</summary>
    private string KeyOf(string path) => PlainKey.Of(Path.GetRelativePath(Root, path));

    /// <summary>The list that lies beside a profile.</summary>
    private static string? RosterBeside(Library library, string profile)
    {
        var folder = Path.GetDirectoryName(profile)!;
        return library.Tree.Files(folder).Where(name => name.StartsWith("roster", StringComparison.OrdinalIgnoreCase) && Path.GetExtension(name).ToLowerInvariant() is (".csv" or ".tsv" or ".xlsx" or ".ods"))
            .Select(name => Path.Combine(folder, name)).FirstOrDefault();
    }
}
