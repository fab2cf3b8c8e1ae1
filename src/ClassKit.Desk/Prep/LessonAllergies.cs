using ClassKit.Desk.Folders;
using ClassKit.Desk.Serving;
using ClassKit.Lessons.Packs;
using ClassKit.UseCases.Packs;

namespace ClassKit.Desk.Prep;

/// <summary>
/// What somebody of a class must keep away from in a lesson's breads and demonstrations, where the lesson is chosen. For the instructor alone.
/// </summary>
/// <param name="Need">What it is, as the class's page has it.</param>
/// <param name="In">The breads that are declared to hold it, by their titles, and what is shown with it.</param>
public sealed record LessonAllergies(string Need, IReadOnlyList<string> In)
{
    /// <summary>
    /// By lesson; null for one that cannot be worked out for this class, so that nobody knows what of it is in whose way. Lessons that are
    /// in nobody's way are left out.
    /// </summary>
    internal static IReadOnlyDictionary<string, IReadOnlyList<LessonAllergies>?> Of(
        Visit visit,
        ClassEntry known,
        IReadOnlyList<LessonEntry> lessons
    ) =>
        known.Profile.Model is not { Allergies.Count: > 0 }
            ? new Dictionary<string, IReadOnlyList<LessonAllergies>?>()
            : visit.Desk.Kept.Get($"allergies {known.Key}", visit.Folder.Stamp(), () =>
                lessons
                    .Select(lesson => (lesson.Key, Found: Of(known, lesson)))
                    .Where(pair => pair.Found is not { Count: 0 })
                    .ToDictionary(pair => pair.Key, pair => pair.Found)
            );

    private static IReadOnlyList<LessonAllergies>? Of(ClassEntry known, LessonEntry lesson) =>
        BuildPack.Read(lesson.Path, known.File) is { Succeeded: true, Model: var request }
        && ComputedPack.Build(request.Lesson, request.Profile).TryGet(out var pack, out _)
            ?
            [
                .. pack
                    .Concerns.Select(concern => new LessonAllergies(
                        concern.Need.Word,
                        [
                            .. concern.Breads.Where(bread => bread.Declared.Count > 0).Select(bread => bread.Card.Bread.Formula.Title),
                            .. concern
                                .Shown.Where(shown => shown.Declared.Count > 0)
                                .Select(shown => $"the demonstration “{shown.Shown.Name}”"),
                        ]
                    ))
                    .Where(found => found.In.Count > 0),
            ]
            : null;
}
