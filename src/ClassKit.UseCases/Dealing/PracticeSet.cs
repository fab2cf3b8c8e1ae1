using ClassKit.Content.Banks;
using ClassKit.Content.Diagnostics;
using ClassKit.Content.Lessons;
using ClassKit.Content.Rubrics;
using ClassKit.Content.Sources;
using ClassKit.Exercises.Authoring;
using ClassKit.Exercises.Choosing;
using ClassKit.Exercises.Dealing;
using ClassKit.Exercises.Layout;
using ClassKit.Exercises.Marking;
using ClassKit.Lessons.Authored;
using ClassKit.Wording.Dealing;

namespace ClassKit.UseCases.Dealing;

/// <summary>The exercises that a class is dealt, and how they are marked.</summary>
/// <param name="Id">The lesson's id, or the folder's name.</param>
/// <param name="Title">What stands at the top of workbooks and pages.</param>
/// <param name="Exercises">In workbook order.</param>
/// <param name="Marking">How outcomes become points.</param>
public sealed record PracticeSet(string Id, string Title, IReadOnlyList<Exercise> Exercises, MarkingScheme Marking)
{
    /// <summary>All that the exercises were chosen from.</summary>
    public IReadOnlyList<Exercise> Pool { get; init; } = Exercises;

    /// <summary>True for exercises that belong to no lesson.</summary>
    public bool IsBank { get; init; }

    /// <summary>How messages name where it was read.</summary>
    public string Source { get; init; } = Id;

    /// <summary>Where marks are described if no lesson says where.</summary>
    private const string UsualMarks = "rubrics/calculation-marks.md";

    /// <summary>Reads a lesson, or a folder of exercises, and chooses from it what is wanted.</summary>
    /// <param name="source">With a wish, a lesson may also draw from the folder <c>practice</c> beside it.</param>
    /// <param name="wish">What is wanted.</param>
    /// <param name="seed">Decides among sets that fulfil the wish equally well.</param>
    public static Reading<PracticeSet> Read(Source source, SetWish wish, ulong seed)
    {
        ArgumentNullException.ThrowIfNull(source);
        ArgumentNullException.ThrowIfNull(wish);
        var (library, folder) = (source.Library, source.Path);
        var isBank =
            library.Tree.At(folder) == SourceKind.Folder && library.Tree.At(Path.Combine(folder, LessonReader.FileName)) != SourceKind.File;
        var all = isBank ? OfFolder(source) : OfLesson(source, wish);
        if (!all.Succeeded)
            return all;
        if (all.Model.Exercises.Count == 0)
            return new(
                null,
                [
                    new(
                        folder,
                        null,
                        "There is no exercise to deal",
                        "Link some under `## Exercises` in the lesson, or name a folder of exercises."
                    ),
                ]
            );
        if (Misnamed(folder, all.Model.Exercises, wish) is { Count: > 0 } problems)
            return new(null, problems);
        var chosen = SetChooser.Choose(all.Model.Exercises, wish, seed);
        if (chosen.Count == 0)
            return new(
                null,
                [new(folder, null, "No exercise fits what is asked", "Ask for other skills or levels, or for more minutes or points.")]
            );
        if (PracticeLayout.FirstNameClash(chosen) is { } clash)
            return new(null, [Clash(folder, clash)]);
        return new(all.Model with { Exercises = chosen, Pool = all.Model.Exercises, Source = folder }, []);
    }

    /// <summary>What is said of two cells with one name.</summary>
    internal static Diagnostic Clash(string folder, string name) =>
        new(folder, null, $"Two cells of the practice workbook would both be named {name}", "Rename an exercise, a given or a part.");

    /// <summary>What is said of exercises that cannot be dealt.</summary>
    internal static IReadOnlyList<Diagnostic> Undealt(string folder, DealResult result) =>
        [
            .. result.Problems.Select(problem => new Diagnostic(folder, null, "An exercise cannot be dealt", DealProblemWords.Of(problem))
            {
                Remedy = Remedy.CheckContent,
            }),
        ];

    /// <summary>All of a lesson's own exercises.</summary>
    public static PracticeSet Of(Lesson lesson)
    {
        ArgumentNullException.ThrowIfNull(lesson);
        return new(lesson.Id, lesson.Title, lesson.Exercises, lesson.Marking);
    }

    private static Reading<PracticeSet> OfLesson(Source folder, SetWish wish)
    {
        var lesson = LessonReader.Read(folder);
        if (!lesson.Succeeded)
            return new(null, lesson.Problems);
        var set = Of(lesson.Model);
        if (wish.IsNone)
            return new(set, []);
        var bank = ExerciseBank.Beside(folder);
        return bank.Succeeded
            ? new(
                set with
                {
                    Exercises =
                    [
                        .. set.Exercises,
                        .. bank.Model.Exercises.ExceptBy(set.Exercises.Select(exercise => exercise.Id), exercise => exercise.Id),
                    ],
                },
                []
            )
            : new(null, bank.Problems);
    }

    private static Reading<PracticeSet> OfFolder(Source folder)
    {
        var bank = ExerciseBank.Read(folder);
        var name = Path.GetFileName(folder.Library.Tree.Full(folder.Path));
        if (!bank.Succeeded)
            return new(null, bank.Problems);
        if (MarksAbove(folder) is not { } file)
            return new(
                null,
                [
                    new(
                        folder.Path,
                        null,
                        $"There is no {UsualMarks} here or in a folder above",
                        "It says how answers are marked: copy one there, or deal a lesson, which names its own."
                    ),
                ]
            );
        var marking = MarkingSchemeReader.Read(file);
        return marking.Succeeded
            ? new(
                new(
                    name,
                    name == ExerciseBank.FolderName ? "Practice" : $"Practice: {name.Replace('-', ' ')}",
                    bank.Model.Exercises,
                    marking.Model
                )
                {
                    IsBank = true,
                },
                []
            )
            : new(null, marking.Problems);
    }

    private static Source? MarksAbove(Source folder)
    {
        var tree = folder.Library.Tree;
        for (var at = tree.Full(folder.Path); at is not null; at = Path.GetDirectoryName(at))
        {
            if (Path.Combine(at, UsualMarks) is var file && tree.At(file) == SourceKind.File)
                return folder.Library.At(file);
        }
        return null;
    }

    private static List<Diagnostic> Misnamed(string folder, IReadOnlyList<Exercise> pool, SetWish wish)
    {
        var ids = pool.Select(exercise => exercise.Id).ToList();
        var skills = pool.Select(exercise => exercise.Skill).Distinct().Order(StringComparer.Ordinal).ToList();
        return
        [
            .. wish
                .Exercises.Except(ids)
                .Select(id => new Diagnostic(folder, null, $"There is no exercise called `{id}`", ExerciseBank.Advice(id, ids))),
            .. wish
                .Exercises.GroupBy(id => id)
                .Where(group => group.Count() > 1)
                .Select(group => new Diagnostic(folder, null, $"The exercise `{group.Key}` is asked for twice", "Name it once.")),
            .. wish
                .Skills.Where(skill => !skills.Contains(skill, StringComparer.OrdinalIgnoreCase))
                .Select(skill => new Diagnostic(
                    folder,
                    null,
                    $"There is no exercise of the skill `{skill}`",
                    ExerciseBank.Advice(skill, skills)
                )),
        ];
    }
}
