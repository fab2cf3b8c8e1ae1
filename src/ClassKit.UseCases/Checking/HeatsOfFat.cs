using ClassKit.Baking.Cooking;
using ClassKit.Baking.Household;
using ClassKit.Baking.Quantities;
using ClassKit.BenchPlans.Classes;
using ClassKit.Content.Diagnostics;
using ClassKit.Lessons.Authored;
using ClassKit.Lessons.Classes;

namespace ClassKit.UseCases.Checking;

/// <summary>
/// Fat that is asked at more heats than a class has fryers: it takes minutes from one to the next, and no plan keeps them unless a step
/// says so.
/// </summary>
internal static class HeatsOfFat
{
    /// <summary>The first class with too few; null if there is none, or where a step occupies a fryer in which nothing cooks.</summary>
    /// <param name="path">The lesson's file.</param>
    /// <param name="lesson">The lesson.</param>
    /// <param name="classes">Those that it was checked with.</param>
    public static Diagnostic? Of(string path, Lesson lesson, IReadOnlyList<ClassProfile> classes)
    {
        List<MethodStep> steps = [.. lesson.Formulas.SelectMany(bread => bread.Steps)];
        if (steps.Exists(step => !step.IsCooking && step.Work.Uses.Any(use => use.Kind == EquipmentKind.Fryer)))
            return null;
        var heats = steps
            .Where(step => step.Way == CookingWay.Fryer)
            .Select(step => step.Temperature)
            .OfType<Temperature>()
            .Distinct()
            .OrderBy(heat => heat.Celsius)
            .Select(TemperatureNotation.AsWritten)
            .ToList();
        return heats.Count > 1 && classes.FirstOrDefault(profile => profile.ApplianceOf(EquipmentKind.Fryer).Count < heats.Count) is { } few
            ? new(
                path,
                null,
                $"Fat is asked at {string.Join(", ", heats)}, {few.Name} counts {EquipmentKind.Fryer.Counted(few.ApplianceOf(EquipmentKind.Fryer).Count ?? 0)}, and a plan takes no time from one heat to another",
                "Let a step occupy the fryer while its fat heats, such as the rest before a second frying: `(10 min, unattended, fryer)`; or keep a fryer for each heat."
            )
            {
                Weight = Weight.Noted,
            }
            : null;
    }
}
