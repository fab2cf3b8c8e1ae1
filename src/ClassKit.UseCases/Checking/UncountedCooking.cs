using ClassKit.Content.Diagnostics;
using ClassKit.Lessons.Authored;
using ClassKit.Lessons.Classes;
using ClassKit.Lessons.Cooking;

namespace ClassKit.UseCases.Checking;

/// <summary>
/// What a lesson cooks in besides ovens and no class that it was checked with counts: plans then take one for each team, which a kitchen
/// need not have.
/// </summary>
internal static class UncountedCooking
{
    /// <summary>The first of it; null if there is none, or where no class was named.</summary>
    /// <param name="path">The lesson's file.</param>
    /// <param name="lesson">The lesson.</param>
    /// <param name="classes">Those that it was checked with.</param>
    public static Diagnostic? Of(string path, Lesson lesson, IReadOnlyList<ClassProfile> classes)
    {
        if (classes.Count == 0)
            return null;
        foreach (
            var (bread, place) in lesson.Formulas.SelectMany(bread =>
                bread.Cooking.Select(step => (bread, CookingPlace.Of(step.Way!.Value)))
            )
        )
        {
            if (place is not { Kind: { } kind, HeatUpMinutes: > 0 } || classes.Any(profile => profile.ApplianceOf(kind).Count is not null))
                continue;
            return new(
                path,
                null,
                $"{bread.Formula.Title} is cooked in a {kind.One}, and {classes[0].Name} counts no {kind.Many}: one for each team is taken",
                $"Count them in the class: `equipment: [{kind.Counted(2)}]`, or as many as there are."
            )
            {
                Weight = Weight.Doubtful,
            };
        }
        return null;
    }
}
