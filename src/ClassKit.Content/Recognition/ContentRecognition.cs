using ClassKit.Content.Ingredients;
using ClassKit.Content.Lessons;
using ClassKit.Content.Sources;

namespace ClassKit.Content.Recognition;

/// <summary>Tells from a file's name, its folder and its first lines what it is, even if it is broken.</summary>
internal static class ContentRecognition
{
    /// <summary>What is written for people beside the content, with examples of all kinds.</summary>
    private const string Handbook = "README.md";

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
        ("roster:", ContentKind.Term),
        ("currency:", ContentKind.PriceList),
        ("## Criteria", ContentKind.PracticalRubric),
    ];

    /// <summary>The kind of a file, or null.</summary>
    public static ContentKind? Of(Source source)
    {
        var name = Path.GetFileName(source.Path);
        return Path.GetExtension(name).ToLowerInvariant() switch
        {
            _ when IngredientsReader.FileNames.Contains(name, StringComparer.OrdinalIgnoreCase) => ContentKind.Ingredients,
            ".csv" or ".tsv" or ".xlsx" or ".ods" => ContentKind.Roster,
            ".md" when name == LessonReader.FileName => ContentKind.Lesson,
            ".md" when name.Equals(Handbook, StringComparison.OrdinalIgnoreCase) => null,
            ".md" => ByKeys(source) ?? ByFolder(source),
            _ => null,
        };
    }

    /// <summary>The kind that a file's own first lines name, whatever folder it is in; null if they name none.</summary>
    public static ContentKind? Plainly(Source source) =>
        Path.GetFileName(source.Path) == LessonReader.FileName ? ContentKind.Lesson : ByKeys(source);

    private static ContentKind? ByKeys(Source source)
    {
        var lines = source.Library.Bytes(source.Path).FirstLines(FirstLines).ToList();
        return Keys.Where(known => lines.Exists(line => line.StartsWith(known.Key, StringComparison.Ordinal)))
            .Select(known => (ContentKind?)known.Kind)
            .FirstOrDefault();
    }

    private static ContentKind? ByFolder(Source source) =>
        source.Folder.Name switch
        {
            "exercises" => ContentKind.Exercise,
            "formulas" => ContentKind.Formula,
            "rubrics" => ContentKind.MarkingScheme,
            _ when Path.GetFileName(source.Path) == "class.md" => ContentKind.ClassProfile,
            _ => null,
        };
}
