using ClassKit.Content.Checking;
using ClassKit.Content.Classes;
using ClassKit.Content.Recognition;
using ClassKit.Content.Sources;

namespace ClassKit.Desk.Folders;

/// <summary>
/// The folder that a desk is opened on. Whatever a page names is looked up among what is found here: no path ever comes from a browser.
/// </summary>
/// <param name="Root">In full.</param>
public sealed record TeachingFolder(string Root)
{
    /// <summary>Below it lie what was dealt, what came back and what was graded of it.</summary>
    public const string RoundsName = "rounds";

    /// <summary>Below it lie lesson packs that were kept.</summary>
    public const string PacksName = "packs";

    /// <summary>Below it lies what classes measured.</summary>
    public const string MeasuredName = "measured";

    /// <summary>Below a class's rounds lie those that were taken away.</summary>
    private const string AsideName = "taken-away";

    private static readonly EnumerationOptions WithoutLinks = new()
    {
        RecurseSubdirectories = true,
        AttributesToSkip = FileAttributes.ReparsePoint,
    };

    /// <summary>True for the invented class, in a folder that goes away with the desk.</summary>
    public bool IsLookRound { get; init; }

    /// <summary>What it is called.</summary>
    public string Name => IsLookRound ? "The invented class" : Path.GetFileName(Path.TrimEndingDirectorySeparator(Root));

    /// <summary>Every class, by its profile.</summary>
    public IReadOnlyList<ClassEntry> Classes()
    {
        var library = Library.OfPaths();
        return
        [
            .. Apart(Of(ContentKind.ClassProfile, library), PlainKey.Of)
                .Select(item => new ClassEntry(
                    item.Key,
                    item.Path,
                    ClassProfileReader.Read(library.At(item.Path)),
                    RosterBeside(library, item.Path)
                )),
        ];
    }

    /// <summary>The class of a key; null if there is none.</summary>
    public ClassEntry? Class(string? key) => Classes().FirstOrDefault(entry => entry.Key == key);

    /// <summary>The instructor's own lessons, then those that ship.</summary>
    public IReadOnlyList<LessonEntry> Lessons()
    {
        var own = Keyed(ContentKind.Lesson).Select(item => LessonEntry.Of(item.Key, item.Path)).ToList();
        return [.. own, .. LessonEntry.Shipped.Where(shipped => !own.Exists(lesson => lesson.Key == shipped.Key))];
    }

    /// <summary>The lesson of a key; null if there is none.</summary>
    public LessonEntry? Lesson(string? key) => Lessons().FirstOrDefault(entry => entry.Key == key);

    /// <summary>Every authored file of a kind, whatever is wrong with it.</summary>
    public IReadOnlyList<string> PathsOf(ContentKind kind) => Of(kind, Library.OfPaths());

    /// <summary>The same, each with the key by which addresses and forms name it: no two of a kind have one key.</summary>
    public IReadOnlyList<(string Key, string Path)> Keyed(ContentKind kind) => [.. Apart(PathsOf(kind), PlainKey.Of)];

    /// <summary>The file of a kind that has a key; null if none has.</summary>
    public string? PathOf(ContentKind kind, string? key) => Keyed(kind).FirstOrDefault(item => item.Key == key).Path;

    private List<string> Of(ContentKind kind, Library library) =>
        [.. Found(library).Where(item => item.Kind == kind).Select(item => item.Path)];

    /// <summary>Paths with keys that tell them apart.</summary>
    private IEnumerable<(string Key, string Path)> Apart(IReadOnlyList<string> paths, Func<string, string> key) =>
        PlainKey.Apart([.. paths.Select(path => Path.GetRelativePath(Root, path))], key).Zip(paths);

    /// <summary>Everything authored in it, by what it is.</summary>
    /// <param name="library">How files are read.</param>
    public IReadOnlyList<CheckedItem> Items(Library library) => [.. Found(library)];

    /// <summary>The rounds of a class, the latest first.</summary>
    public IReadOnlyList<Round> Rounds(ClassEntry known)
    {
        ArgumentNullException.ThrowIfNull(known);
        return RoundsIn(known, RoundsOf(known));
    }

    /// <summary>The rounds of a class that were taken away and can be put back, the latest first.</summary>
    public IReadOnlyList<Round> RoundsAside(ClassEntry known)
    {
        ArgumentNullException.ThrowIfNull(known);
        return RoundsIn(known, Path.Combine(RoundsOf(known), AsideName));
    }

    /// <summary>Where a round lies.</summary>
    public string RoundPlace(ClassEntry known, string name) => Path.Combine(RoundsOf(known), name);

    /// <summary>Where a round lies that was taken away.</summary>
    public string AsideOf(ClassEntry known, string name) => Path.Combine(RoundsOf(known), AsideName, name);

    /// <summary>A round of a class; null if there is none of that name.</summary>
    public Round? Round(ClassEntry known, string? name) => Rounds(known).FirstOrDefault(round => round.Name == name);

    /// <summary>Where the next round of a class goes.</summary>
    /// <param name="known">The class.</param>
    /// <param name="what">What is dealt, in a word or two.</param>
    public Round NewRound(ClassEntry known, string what)
    {
        ArgumentNullException.ThrowIfNull(known);
        return new(known.Key, Path.Combine(RoundsOf(known), Folders.Round.NameOf(NextNumber(known), what)));
    }

    /// <summary>The rounds in which practice was handed out that followed one, the first of them first.</summary>
    public IReadOnlyList<Round> After(ClassEntry known, Round round)
    {
        ArgumentNullException.ThrowIfNull(round);
        return [.. Rounds(known).Where(other => other.Name == Folders.Round.NameOf(other.Number, round.Follows)).Reverse()];
    }

    /// <summary>The number of the next round of a class: one that no round had, nor one that was taken away; at least 1.</summary>
    public int NextNumber(ClassEntry known) =>
        Rounds(known).Concat(RoundsAside(known)).Select(round => round.Number).DefaultIfEmpty().Max() + 1;

    /// <summary>Where the pack of a lesson for a class is kept.</summary>
    public string PackOf(ClassEntry known, LessonEntry lesson)
    {
        ArgumentNullException.ThrowIfNull(known);
        ArgumentNullException.ThrowIfNull(lesson);
        return Path.Combine(Root, PacksName, known.Key, lesson.Key);
    }

    /// <summary>Where it lies what a class measured of a lesson.</summary>
    public Measured MeasuredOf(ClassEntry known, LessonEntry lesson)
    {
        ArgumentNullException.ThrowIfNull(known);
        ArgumentNullException.ThrowIfNull(lesson);
        return new(Path.Combine(Root, MeasuredName, known.Key, lesson.Key));
    }

    /// <summary>Every plain file that an instructor may change: what was authored, and tables.</summary>
    public IReadOnlyList<TextEntry> Texts()
    {
        var lessons = Lessons().Where(lesson => !lesson.IsShipped).Select(lesson => lesson.Path).ToList();
        var texts = Authored()
            .Where(file => file.Extension.ToLowerInvariant() is ".md" or ".csv" or ".tsv")
            .Select(file => file.FullName)
            .ToList();
        return
        [
            .. Apart(texts, PlainKey.OfFile)
                .Select(file => new TextEntry(
                    file.Key,
                    file.Path,
                    Path.GetRelativePath(Root, file.Path).Replace('\\', '/'),
                    lessons.Find(lesson => file.Path.StartsWith(lesson + Path.DirectorySeparatorChar, StringComparison.Ordinal))
                )),
        ];
    }

    /// <summary>The plain file at a path; null if it is none that can be changed here.</summary>
    public TextEntry? TextAt(string? path) => path is null ? null : Texts().FirstOrDefault(entry => entry.Path == Path.GetFullPath(path));

    /// <summary>A text that changes when anything changes that lessons, classes, prices or rubrics may be made of.</summary>
    public string Stamp() => string.Join('|', Authored().Select(file => $"{file.FullName} {file.Length} {file.LastWriteTimeUtc.Ticks}"));

    private IEnumerable<FileInfo> Authored()
    {
        var root = new DirectoryInfo(Root);
        return root.EnumerateFiles()
            .Concat(
                root.EnumerateDirectories()
                    .Where(folder => folder.Name is not (RoundsName or PacksName or MeasuredName) && folder.Name[0] != '.')
                    .SelectMany(folder => folder.EnumerateFiles("*", WithoutLinks))
            )
            .Where(file => file.Name[0] != '.' && file.LinkTarget is null)
            .OrderBy(file => file.FullName, StringComparer.Ordinal);
    }

    private static IReadOnlyList<Round> RoundsIn(ClassEntry known, string place) =>
        Directory.Exists(place)
            ?
            [
                .. Directory
                    .EnumerateDirectories(place)
                    .Select(folder => new Round(known.Key, folder))
                    .Where(round => round.Number > 0)
                    .OrderByDescending(round => round.Number),
            ]
            : [];

    private string RoundsOf(ClassEntry known) => Path.Combine(Root, RoundsName, known.Key);

    private IEnumerable<CheckedItem> Found(Library library) =>
        ContentChecker.Recognised(library.At(Root), RoundsName, PacksName, MeasuredName);

    /// <summary>
    /// The list that a profile names, or else the one beside it: that which is called roster and nothing more, before copies and lists of
    /// other years.
    /// </summary>
    private static string? RosterBeside(Library library, string profile)
    {
        if (NamedRoster.Of(library.At(profile)) is { } named)
            return Path.GetFullPath(named.Path);
        var folder = Path.GetDirectoryName(profile)!;
        return library
            .Tree.Files(folder)
            .Where(name =>
                name.StartsWith("roster", StringComparison.OrdinalIgnoreCase)
                && Path.GetExtension(name).ToLowerInvariant() is (".csv" or ".tsv" or ".xlsx" or ".ods")
            )
            .OrderBy(name => !Path.GetFileNameWithoutExtension(name).Equals("roster", StringComparison.OrdinalIgnoreCase))
            .Select(name => Path.Combine(folder, name))
            .FirstOrDefault();
    }
}
