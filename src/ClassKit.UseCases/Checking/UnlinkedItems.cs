using ClassKit.Content.Checking;
using ClassKit.Content.Diagnostics;
using ClassKit.Content.Recognition;
using ClassKit.Content.Sources;

namespace ClassKit.UseCases.Checking;

/// <summary>
/// Rubrics and price lists that none of the lessons and classes beside them leads to: an old one, or a copy that was changed in its place.
/// </summary>
internal static class UnlinkedItems
{
    /// <summary>Each with what to do about it.</summary>
    /// <param name="library">Has read them all.</param>
    /// <param name="items">What was checked.</param>
    /// <param name="knowsLessons">False if a lesson cannot be read: where it leads to is not known.</param>
    /// <param name="knowsClasses">False if a class cannot be read.</param>
    public static IEnumerable<Diagnostic> Of(Library library, IReadOnlyList<CheckedItem> items, bool knowsLessons, bool knowsClasses)
    {
        foreach (var item in items.Where(item => !library.IsLinked(item.Path)))
        {
            var (what, user) = item.Kind switch
            {
                ContentKind.MarkingScheme => ("marking scheme", ContentKind.Lesson),
                ContentKind.PracticalRubric => ("rubric", ContentKind.Lesson),
                ContentKind.PriceList => ("price list", ContentKind.ClassProfile),
                _ => ("", item.Kind),
            };
            if (what.Length > 0 && (user == ContentKind.Lesson ? knowsLessons : knowsClasses) && items.Any(other => other.Kind == user))
                yield return new(
                    item.Path,
                    null,
                    $"No {(user == ContentKind.Lesson ? "lesson" : "class")} here uses this {what}",
                    "Name it where the other is named if you changed this one, or keep it elsewhere."
                )
                {
                    Weight = Weight.Noted,
                };
        }
    }
}
