using ClassKit.Content.Checking;
using ClassKit.Content.Diagnostics;
using ClassKit.Content.Lessons;
using ClassKit.Content.Recognition;
using ClassKit.Content.Rosters;
using ClassKit.Content.Sources;
using ClassKit.Content.Terms;
using ClassKit.Content.Wording;

namespace ClassKit.UseCases.Checking;

/// <summary>
/// Works and exercises for which a class list arranges something, and which nothing is called: a slip of the pen there would be followed by
/// nothing.
/// </summary>
public static class ArrangedWorks
{
    /// <summary>What is said of a list.</summary>
    /// <param name="list">The class list.</param>
    /// <param name="items">What is checked: its lessons, exercises and terms say what is known.</param>
    public static IEnumerable<Diagnostic> Unknown(Source list, IReadOnlyList<CheckedItem> items)
    {
        ArgumentNullException.ThrowIfNull(list);
        ArgumentNullException.ThrowIfNull(items);
        var library = list.Library;
        if (RosterReader.Read(list).Model is not { Arrangements.Count: > 0 } roster)
            return [];
        var shown = roster.Students.ToDictionary(student => student.Id, student => student.Shown);
        List<(string Student, string Named, bool IsExercise)> named =
        [
            .. roster.Arrangements.SelectMany(one =>
                one.Value.OnlyFor.Select(work => work.Work)
                    .Concat(one.Value.ExcusedFrom)
                    .Distinct()
                    .Select(work => (shown[one.Key], work, false))
                    .Concat(one.Value.LeavesOut.Select(id => (shown[one.Key], id, true)))
            ),
        ];
        if (named.Count == 0)
            return [];
        HashSet<string> works =
        [
            .. Lessons(library, items),
            .. items
                .Where(item => item.Kind == ContentKind.Term)
                .SelectMany(item => TermReader.Read(library.At(item.Path)).Model?.Works ?? [])
                .Select(work => work.Title),
        ];
        HashSet<string> exercises = [.. Exercises(library, items)];
        // What ships is read only for a list that names what is nowhere else.
        if (named.Exists(one => !(one.IsExercise ? exercises : works).Contains(one.Named)))
        {
            var shipped = ContentChecker.Recognised(library.At(Shipped.Scheme + "/lessons")).ToList();
            works.UnionWith(Lessons(library, shipped));
            exercises.UnionWith(Exercises(library, shipped));
        }
        return named
            .Where(one => !(one.IsExercise ? exercises : works).Contains(one.Named))
            .Select(one =>
                one.IsExercise
                    ? ToldOfExercise(list, one.Student, one.Named, NearestWord.To(one.Named, exercises))
                    : Told(list, one.Student, one.Named, NearestWord.To(one.Named, works))
            );
    }

    private static Diagnostic ToldOfExercise(Source list, string student, string exercise, string? near) =>
        new(
            list.Path,
            null,
            $"{student} is to leave out `{exercise}`, and no exercise is called so",
            near is null
                ? "Write the name of the exercise's file; until then nothing follows from it."
                : $"Did you mean `{near}`? As it stands, nothing follows from it."
        )
        {
            Weight = near is null ? Weight.Noted : Weight.Doubtful,
        };

    private static Diagnostic Told(Source list, string student, string work, string? near) =>
        near is null
            ? new(
                list.Path,
                null,
                $"Something is arranged with {student} for `{work}`, and no lesson or work of a term among what is checked is called so",
                "Write a lesson's id or title, or the title of a work of the term; check the folder that holds it, too."
            )
            {
                Weight = Weight.Noted,
            }
            : new(
                list.Path,
                null,
                $"Something is arranged with {student} for `{work}`, and no lesson or work of a term is called so",
                $"Did you mean `{near}`? As it stands, nothing follows from it."
            )
            {
                Weight = Weight.Doubtful,
            };

    /// <summary>An exercise is called by its file; a lesson names those that are its own.</summary>
    private static IEnumerable<string> Exercises(Library library, IEnumerable<CheckedItem> items) =>
        items.SelectMany(item =>
            item.Kind switch
            {
                ContentKind.Exercise => [Path.GetFileNameWithoutExtension(item.Path)],
                ContentKind.Lesson => LessonReader.Read(library.At(item.Path)).Model?.Exercises.Select(exercise => exercise.Id) ?? [],
                _ => Enumerable.Empty<string>(),
            }
        );

    private static IEnumerable<string> Lessons(Library library, IEnumerable<CheckedItem> items) =>
        items
            .Where(item => item.Kind == ContentKind.Lesson)
            .SelectMany(item =>
                LessonReader.Read(library.At(item.Path)).Model is { } lesson
                    ? [lesson.Id, lesson.Title]
                    : new[] { Path.GetFileName(item.Path) }
            );
}
