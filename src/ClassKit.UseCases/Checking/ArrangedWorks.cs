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
/// Works for which a class list arranges something, and which nothing is called: a slip of the pen there would be followed by nothing.
/// </summary>
internal static class ArrangedWorks
{
    /// <summary>What is said of a list.</summary>
    /// <param name="list">The class list.</param>
    /// <param name="items">What is checked: its lessons and terms say what is known.</param>
    public static IEnumerable<Diagnostic> Unknown(Source list, IReadOnlyList<CheckedItem> items)
    {
        var library = list.Library;
        var named = (RosterReader.Read(list).Model?.Arrangements ?? new Dictionary<string, Exercises.Cohorts.Arrangement>())
            .SelectMany(one =>
                one.Value.OnlyFor.Select(work => work.Work)
                    .Concat(one.Value.ExcusedFrom)
                    .Distinct()
                    .Select(work => (Student: one.Key, Work: work))
            )
            .ToList();
        if (named.Count == 0)
            return [];
        HashSet<string> known =
        [
            .. Lessons(library, items),
            .. items
                .Where(item => item.Kind == ContentKind.Term)
                .SelectMany(item => TermReader.Read(library.At(item.Path)).Model?.Works ?? [])
                .Select(work => work.Title),
        ];
        // What ships is read only for a list that names what is nowhere else.
        if (named.Exists(one => !known.Contains(one.Work)))
            known.UnionWith(Lessons(library, [.. ContentChecker.Recognised(library.At(Shipped.Scheme + "/lessons"))]));
        return named
            .Where(one => !known.Contains(one.Work))
            .Select(one => Told(list, one.Student, one.Work, NearestWord.To(one.Work, known)));
    }

    private static Diagnostic Told(Source list, string student, string work, string? near) =>
        near is null
            ? new(
                list.Path,
                null,
                $"Something is arranged with `{student}` for `{work}`, and no lesson or work of a term among what is checked is called so",
                "Write a lesson's id or title, or the title of a work of the term; check the folder that holds it, too."
            )
            {
                Weight = Weight.Noted,
            }
            : new(
                list.Path,
                null,
                $"Something is arranged with `{student}` for `{work}`, and no lesson or work of a term is called so",
                $"Did you mean `{near}`? As it stands, nothing follows from it."
            )
            {
                Weight = Weight.Doubtful,
            };

    private static IEnumerable<string> Lessons(Library library, IEnumerable<CheckedItem> items) =>
        items
            .Where(item => item.Kind == ContentKind.Lesson)
            .SelectMany(item =>
                LessonReader.Read(library.At(item.Path)).Model is { } lesson
                    ? [lesson.Id, lesson.Title]
                    : new[] { Path.GetFileName(item.Path) }
            );
}
