using ClassKit.Baking.Household;
using ClassKit.BenchPlans.Classes;
using ClassKit.Content.Diagnostics;
using ClassKit.Lessons.Authored;
using ClassKit.Lessons.Classes;

namespace ClassKit.UseCases.Checking;

/// <summary>
/// Doughs that are to rise warmer than any kitchen they were checked with, where nothing is named that keeps them so warm.
/// </summary>
internal static class WarmRises
{
    /// <summary>A corner out of the draught is as much warmer, in °C. Common practice, no source.</summary>
    private const double Corner = 3;

    /// <summary>The first of them; null if there is none, or where no class says how warm its kitchen is.</summary>
    /// <param name="path">The lesson's file.</param>
    /// <param name="lesson">The lesson.</param>
    /// <param name="classes">Those that it was checked with.</param>
    public static Diagnostic? Of(string path, Lesson lesson, IReadOnlyList<ClassProfile> classes)
    {
        if (classes.Count == 0 || classes.MaxBy(profile => profile.KitchenTemperature.Celsius) is not { } warmest)
            return null;
        foreach (var bread in lesson.Formulas.Where(bread => bread.Formula.IsFermented))
        {
            if (bread.Steps.FirstOrDefault(step => IsTooWarm(step, warmest)) is not { } step)
                continue;
            return new(
                path,
                null,
                $"{bread.Formula.Title}: `{step.Name}` is at {TemperatureNotation.AsWritten(step.Temperature!.Value)}, the kitchen of {warmest.Name} at {TemperatureNotation.AsWritten(warmest.KitchenTemperature)}, and nothing keeps it warm",
                "Write `proofing place` into the step's brackets and count them in the class (`equipment: [6 proofing places]`), or let it rise as warm as the kitchen is, and longer."
            )
            {
                Weight = Weight.Doubtful,
            };
        }
        return null;
    }

    private static bool IsTooWarm(MethodStep step, ClassProfile kitchen) =>
        step is { IsCooking: false, Work: { People: 0, Uses: var uses }, Temperature: { } rise }
        && rise.Celsius > kitchen.KitchenTemperature.Celsius + Corner
        && uses.All(use => use.Kind != EquipmentKind.ProofingPlace);
}
