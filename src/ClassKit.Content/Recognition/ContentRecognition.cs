namespace ClassKit.Content.Checking;

/// <summary>Tells from a file's name, its folder and its first lines what it is, even if it is broken.</summary>
internal static class ContentRecognition
{
    /// <summary>Enough to hold any front matter's keys.</summary>
    private const int FirstLines = 40;

    /// <summary>A key that only this kind of file has.</summary>
    private static readonly (string Key, ContentKind Kind)[] Keys =
    [
        ("skill:", ContentKind.Exercise),
        ("leavening:", ContentKind.Formula),
        ("accuracy:", ContentKind.MarkingScheme),
        ("resit:", ContentKind.GradeRule),
        ("pieces per team:", ContentKind.ClassProfile),
        ("currency:", ContentKind.PriceList),
        ("## Criteria", ContentKind.PracticalRubric),
    ];

    /// <summary>The kind of a file, or null.</summary>
    public static ContentKind? Of(string path)
    {
        var name = Path.GetFileName(path);
        return Path.GetExtension(name).ToLowerInvariant() switch
        {
            ".csv" => ContentKind.Roster,
            ".md" when name == LessonReader.FileName => ContentKind.Lesson,
            ".md" => ByKeys(path) ?? ByFolder(path),
            _ => null,
        };
    }

    private static ContentKind? ByKeys(string path)
    {
        try
        {
            var lines = File.ReadLines(path).Take(FirstLines).ToList();
            return Keys.Where(known => lines.Exists(line => line.StartsWith(known.Key, StringComparison.Ordinal))).Select(known => (ContentKind?)known.Kind).FirstOrDefault();
        }
        catch (Exception refused) when (refused is IOException or UnauthorizedAccessException)
        {
            return null;
        }
    }

    private static ContentKind? ByFolder(string path) => Path.GetFileName(Path.GetDirectoryName(Path.GetFullPath(path))) switch
    {
        "exercises" => ContentKind.Exercise,
        "formulas" => ContentKind.Formula,
        "rubrics" => ContentKind.MarkingScheme,
        _ when Path.GetFileName(path) == "class.md" => ContentKind.ClassProfile,
        _ => null,
    };
}
