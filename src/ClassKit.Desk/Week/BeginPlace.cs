namespace ClassKit.Desk.Week;

/// <summary>A place in which a new teaching folder may be begun: nothing else can be named from a browser.</summary>
/// <param name="Key">How the form calls it.</param>
/// <param name="Words">How the page calls it.</param>
/// <param name="Folder">Where it is.</param>
public sealed record BeginPlace(string Key, string Words, string Folder)
{
    /// <summary>Those that this user has.</summary>
    public static IReadOnlyList<BeginPlace> All { get; } =
    [
        .. new[]
        {
            new BeginPlace("documents", "in my documents", Environment.GetFolderPath(Environment.SpecialFolder.MyDocuments)),
            new BeginPlace("home", "in my home folder", Environment.GetFolderPath(Environment.SpecialFolder.UserProfile)),
            new BeginPlace("here", "where the desk was opened", Environment.CurrentDirectory),
        }
            .Where(place => place.Folder.Length > 0 && Directory.Exists(place.Folder))
            .DistinctBy(place => place.Folder),
    ];
}
