using ClassKit.Desk.Folders;

namespace ClassKit.Desk.Week;

/// <summary>
/// A teaching folder that is there already, in a place where one may be begun: the desk was open on it before, or a class lies in it.
/// </summary>
/// <param name="Key">How the form calls it.</param>
/// <param name="Folder">Where it is.</param>
public sealed record KnownFolder(string Key, string Folder)
{
    private const string Profile = "class.md";

    /// <summary>So many are looked through in a place, and so many offered.</summary>
    private const int Most = 200;

    private static readonly EnumerationOptions Plain = new()
    {
        AttributesToSkip = FileAttributes.Hidden | FileAttributes.System | FileAttributes.ReparsePoint,
    };

    /// <summary>Those that can be found, each once, and those that this desk was opened on; but not the one that it is open on.</summary>
    internal static IReadOnlyList<KnownFolder> Of(FolderHolder folders) =>
        [
            .. folders
                .Opened.Where(folder => !folder.IsLookRound && Directory.Exists(folder.Root))
                .Select((folder, place) => new KnownFolder($"opened/{place}", folder.Root))
                .Concat(In(BeginPlace.All))
                .DistinctBy(known => Path.GetFullPath(known.Folder))
                .Where(known => known.Folder != folders.Current?.Root),
        ];

    /// <summary>Those in some places, each once.</summary>
    public static IReadOnlyList<KnownFolder> In(IReadOnlyList<BeginPlace> places) =>
        [
            .. places
                .SelectMany(place =>
                    Directory
                        .EnumerateDirectories(place.Folder, "*", Plain)
                        .Order(StringComparer.Ordinal)
                        .Take(Most)
                        .Prepend(place.Folder)
                        .Where(IsOne)
                        .Select(folder => new KnownFolder($"{place.Key}/{Path.GetFileName(folder)}", folder))
                )
                .DistinctBy(known => Path.GetFullPath(known.Folder))
                .Take(Most),
        ];

    private static bool IsOne(string folder) =>
        File.Exists(Path.Combine(folder, FolderHolder.LockName)) || File.Exists(Path.Combine(folder, Profile));
}
