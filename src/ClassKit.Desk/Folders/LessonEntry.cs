using ClassKit.Content.Sources;

namespace ClassKit.Desk.Folders;

/// <summary>A lesson, or the practice bank.</summary>
/// <param name="Key">How addresses call it.</param>
/// <param name="Path">Its folder.</param>
/// <param name="Title">What it is called.</param>
public sealed record LessonEntry(string Key, string Path, string Title)
{
    private const string ShippedLessons = Content.Sources.Shipped.Scheme + "/lessons";

    /// <summary>True for one that comes with the program and cannot be changed.</summary>
    public bool IsShipped => Path.StartsWith(Content.Sources.Shipped.Scheme, StringComparison.Ordinal);

    /// <summary>Those that come with the program.</summary>
    public static IReadOnlyList<LessonEntry> Shipped { get; } =
    [
        .. PathTree
            .Instance.Folders(ShippedLessons)
            .Where(name => PathTree.Instance.At($"{ShippedLessons}/{name}/lesson.md") == SourceKind.File)
            .Select(name => Of(name, $"{ShippedLessons}/{name}")),
    ];

    /// <summary>The exercises that come with the program, apart from any lesson.</summary>
    public static LessonEntry Bank { get; } = new("practice-bank", $"{ShippedLessons}/practice", "The practice bank");

    /// <summary>The lesson of a folder, called by the first heading of its text.</summary>
    public static LessonEntry Of(string key, string folder)
    {
        try
        {
            using var text = new StreamReader(PathTree.Instance.Open(System.IO.Path.Combine(folder, "lesson.md")));
            if (TextHeading.Of(text) is { } title)
                return new(key, folder, title);
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            // A lesson that cannot be opened is called by its folder; reading it says why.
        }
        return new(key, folder, System.IO.Path.GetFileName(folder));
    }
}
