using ClassKit.Content.Lessons;
using ClassKit.Content.Sources;
using ClassKit.Desk.Folders;
using ClassKit.Desk.HandOut;
using ClassKit.Desk.Serving;
using ClassKit.Exercises.Authoring;

namespace ClassKit.Desk.Prep;

/// <summary>What a lesson is chosen by: how long it takes, what is baked, and what is practised in it.</summary>
/// <param name="Minutes">The period it is meant for, in minutes.</param>
/// <param name="Breads">Their titles.</param>
/// <param name="Exercises">How many there are.</param>
/// <param name="Levels">Their levels, the easiest first.</param>
/// <param name="Skills">What they practise.</param>
public sealed record LessonCard(
    int Minutes,
    IReadOnlyList<string> Breads,
    int Exercises,
    IReadOnlyList<ExerciseLevel> Levels,
    IReadOnlyList<string> Skills
)
{
    /// <summary>The levels, in words.</summary>
    public string LevelText =>
        Levels.Count == 0 ? ""
        : Levels.Count == 1 ? LevelWords.Of(Levels[0])
        : $"{LevelWords.Of(Levels[0])} to {LevelWords.Of(Levels[^1])}";

    /// <summary>By lesson; one that cannot be read has none.</summary>
    internal static IReadOnlyDictionary<string, LessonCard> Of(Visit visit, IReadOnlyList<LessonEntry> lessons) =>
        visit.Desk.Kept.Get("lesson cards", visit.Folder.Stamp(), () =>
            lessons
                .Select(lesson => (lesson.Key, Read: LessonReader.Read(Library.OfPaths().At(lesson.Path)).Model))
                .Where(pair => pair.Read is not null)
                .ToDictionary(
                    pair => pair.Key,
                    pair => new LessonCard(
                        pair.Read!.PeriodMinutes,
                        [.. pair.Read.Formulas.Select(formula => formula.Formula.Title)],
                        pair.Read.Exercises.Count,
                        [.. pair.Read.Exercises.Select(exercise => exercise.Level).Distinct().Order()],
                        [.. pair.Read.Exercises.Select(exercise => exercise.Skill).Distinct()]
                    )
                )
        );
}
