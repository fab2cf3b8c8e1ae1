using System.Security.Cryptography;
using System.Text;
using ClassKit.Desk.Folders;

namespace ClassKit.Desk.Week;

/// <summary>
/// A teaching folder that is there already, in a place where one may be begun: the desk was open on it before, or a class lies in it.
/// </summary>
/// <param name="Folder">Where it is.</param>
public sealed record KnownFolder(string Folder)
{
    private const string Profile = "class.md";

    /// <summary>So many are looked through in a place, and so many offered.</summary>
    private const int Most = 200;

    private static readonly EnumerationOptions Plain = new()
    {
        AttributesToSkip = FileAttributes.Hidden | FileAttributes.System | FileAttributes.ReparsePoint,
    };

    /// <summary>
    /// How the form calls it: by where it is, never by its place among others or its name alone. Whatever comes or goes between a page and
    /// its answer, such as a stick, the folder that was chosen is opened or none.
    /// </summary>
    public string Key => Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(Path.GetFullPath(Folder))));

    /// <summary>Those that can be found, each once, and those that this desk was opened on; but not the one that it is open on.</summary>
    internal static IReadOnlyList<KnownFolder> Of(FolderHolder folders) =>
        [
            .. folders
                .Opened.Where(folder => !folder.IsLookRound && Directory.Exists(folder.Root))
                .Select(folder => new KnownFolder(folder.Root))
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
                        .Select(folder => new KnownFolder(folder))
                )
                .DistinctBy(known => Path.GetFullPath(known.Folder))
                .Take(Most),
        ];

    private static bool IsOne(string folder) =>
        File.Exists(Path.Combine(folder, FolderHolder.LockName)) || File.Exists(Path.Combine(folder, Profile));
}
