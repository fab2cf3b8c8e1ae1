using ClassKit.Content.Checking;
using ClassKit.Content.Diagnostics;
using ClassKit.Content.Exercises;
using ClassKit.Content.Recognition;
using ClassKit.Content.Sources;
using ClassKit.Content.Wording;
using ClassKit.Exercises.Authoring;

namespace ClassKit.Content.Banks;

/// <summary>A folder of exercises, in folders by skill: <c>lessons/practice/yeast/later_bake.md</c>.</summary>
/// <param name="Exercises">In the order of their paths; ids are unique.</param>
public sealed record ExerciseBank(IReadOnlyList<Exercise> Exercises)
{
    /// <summary>The folder beside lessons that holds the exercises they may draw from.</summary>
    public const string FolderName = "practice";

    /// <summary>The bank of a lesson: the folder <c>practice</c> beside it, or an empty bank if there is none.</summary>
    public static Reading<ExerciseBank> Beside(Source lessonFolder)
    {
        ArgumentNullException.ThrowIfNull(lessonFolder);
        var folder = lessonFolder.At(
            ContentPath.Beside(lessonFolder.Path.Length == 0 ? "." : Path.TrimEndingDirectorySeparator(lessonFolder.Path), FolderName)
        );
        return folder.IsFolder ? Read(folder) : new(new ExerciseBank([]), []);
    }

    /// <summary>Every exercise at or below a folder, or everything that is wrong with any of them.</summary>
    public static Reading<ExerciseBank> Read(Source folder)
    {
        ArgumentNullException.ThrowIfNull(folder);
        if (!folder.IsFolder)
            return new(
                null,
                [
                    new(
                        folder.Shown,
                        null,
                        "There is no such folder",
                        Nearby.Folders(folder) ?? "Name a lesson's folder, or a folder of exercises."
                    ),
                ]
            );
        var check = ContentChecker.Recognised(folder).Where(item => item.Kind == ContentKind.Exercise).Select(item => item.Path).ToList();
        if (check.Count == 0)
            return new(
                null,
                [
                    new(
                        folder.Shown,
                        null,
                        "There is no exercise in this folder",
                        "Name a lesson's folder, or a folder of exercises such as lessons/practice."
                    ),
                ]
            );
        var readings = check.ConvertAll(path => (Path: path, Reading: ExerciseReader.Read(folder.At(path))));
        List<Diagnostic> problems = [.. readings.SelectMany(reading => reading.Reading.Problems)];
        foreach (
            var twice in readings
                .Where(reading => reading.Reading.Succeeded)
                .GroupBy(reading => reading.Reading.Model!.Id)
                .Where(group => group.Count() > 1)
        )
            problems.Add(
                new(
                    ContentPath.Shown(twice.Last().Path),
                    null,
                    $"Another exercise is called `{twice.Key}` too: {ContentPath.Shown(twice.First().Path)}",
                    "Rename one of the files: the file name is the exercise's id."
                )
            );
        return problems.Count > 0 ? new(null, problems) : new(new([.. readings.Select(reading => reading.Reading.Model!)]), []);
    }

    /// <summary>What may have been meant by a word that is none of those known.</summary>
    public static string Advice(string typed, IReadOnlyCollection<string> known) => NearestWord.Advice(typed, known);
}
