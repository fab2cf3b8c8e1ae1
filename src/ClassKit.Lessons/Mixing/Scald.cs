using ClassKit.Lessons.Authored;

namespace ClassKit.Lessons.Mixing;

/// <summary>
/// Flour over which something boiling is poured, or that is cooked with it to a paste: all of its heat is in the dough, unless it stands
/// before the rest is mixed in.
/// </summary>
public static class Scald
{
    /// <summary>
    /// True of what goes into the mix hot: a step boils or cooks it, and nothing stands unattended between that and the last mixing.
    /// </summary>
    public static bool IsHot(LessonFormula formula, IngredientHeat heat)
    {
        ArgumentNullException.ThrowIfNull(formula);
        ArgumentNullException.ThrowIfNull(heat);
        if (heat.Kind is not (HeatKind.Boiled or HeatKind.Cooked))
            return false;
        var steps = formula.Steps;
        var heated = Enumerable.Range(0, steps.Count).FirstOrDefault(at => steps[at].Work.Heats.Contains(heat), -1);
        var mixed = MixingStep.Of(formula, steps.Count);
        return heated >= 0
            && !Enumerable.Range(heated + 1, Math.Max(0, mixed - heated - 1)).Any(at => steps[at] is { IsCooking: false, Work.People: 0 });
    }

    /// <summary>True of what was boiled or cooked and has come to the kitchen's temperature before the rest is mixed in.</summary>
    public static bool HasStood(LessonFormula formula, IngredientHeat heat)
    {
        ArgumentNullException.ThrowIfNull(heat);
        return heat.Kind is HeatKind.Boiled or HeatKind.Cooked && !IsHot(formula, heat);
    }
}
