using ClassKit.Content.Banks;

namespace ClassKit.UseCases.Output;

/// <summary>All that is read when a lesson, or a folder of exercises, is read.</summary>
public static class LessonInputs
{
    /// <summary>The folder, the bank beside it and the rubrics above it, where there are such.</summary>
    public static IEnumerable<string> Of(string folder)
    {
        ArgumentNullException.ThrowIfNull(folder);
        if (folder.Length == 0)
            return [];
        var above = Parents(Path.GetFullPath(folder)).ToList();
        return
        [
            folder,
            .. above
                .Take(1)
                .Select(parent => Path.Combine(parent, ExerciseBank.FolderName))
                .Concat(above.Select(parent => Path.Combine(parent, "rubrics")))
                .Where(Directory.Exists),
        ];
    }

    private static IEnumerable<string> Parents(string full)
    {
        for (var at = Path.GetDirectoryName(Path.TrimEndingDirectorySeparator(full)); at is not null; at = Path.GetDirectoryName(at))
            yield return at;
    }
}
