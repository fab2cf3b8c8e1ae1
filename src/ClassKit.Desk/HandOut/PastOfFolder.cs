using ClassKit.Desk.Folders;
using ClassKit.Desk.Serving;
using ClassKit.Exercises.Choosing;
using ClassKit.Terms.Difficulty;
using ClassKit.UseCases.Difficulty;
using ClassKit.UseCases.Recording;
using ClassKit.UseCases.Running;

namespace ClassKit.Desk.HandOut;

/// <summary>
/// How exercises proved in all that was judged in the folder and is on its record, and what the class can be expected to earn with each.
/// </summary>
internal static class PastOfFolder
{
    /// <summary>By the exercises' ids; those that nobody was asked yet are left out.</summary>
    public static IReadOnlyDictionary<string, PointsBand> Of(Visit visit, ClassEntry known, LessonEntry lesson)
    {
        var folder = visit.Folder;
        List<string> graded =
        [
            .. folder
                .Classes()
                .SelectMany(folder.Rounds)
                .Select(visit.Look)
                .OfType<RoundState>()
                .Where(state => state.Grades is not null)
                .Select(state => state.Round.Graded),
        ];
        var past = new PastPaths(File.Exists(RecordPlace.Of(folder.Root)) ? folder.Root : null, graded, visit.Desk.Now);
        if (past.IsNone)
            return new Dictionary<string, PointsBand>();
        var stamp = Kept.StampOf([RecordPlace.Of(folder.Root), .. graded.Select(one => Path.Combine(one, "grades.json"))]);
        return visit.Desk.Kept.Get($"difficulty {known.Key} {lesson.Key}", folder.Stamp() + stamp, () => Worked(known, lesson, past));
    }

    private static Dictionary<string, PointsBand> Worked(ClassEntry known, LessonEntry lesson, PastPaths past)
    {
        var request = ShowDifficulty.Read(lesson.Path, SetWish.None, past, known.Profile.Succeeded ? known.File : null);
        return request.Succeeded
            ? ShowDifficulty
                .Run(request.Model, Run.Unwatched)
                .Exercises.Where(exercise => exercise.Expected is not null)
                .ToDictionary(exercise => exercise.Exercise.Id, exercise => exercise.Expected!)
            : [];
    }
}
