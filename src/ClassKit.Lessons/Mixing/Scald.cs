using ClassKit.Baking.Ingredients;
using ClassKit.Lessons.Authored;

namespace ClassKit.Lessons.Mixing;

/// <summary>Flour over which something boiling is poured: all of its heat is in the dough, unless the scald stands before the rest is mixed in.</summary>
public static class Scald
{
    /// <summary>True of what goes into the mix boiling: a step boils it, and nothing stands unattended between that and the last mixing.</summary>
    public static bool IsHot(LessonFormula formula, Ingredient ingredient)
    {
        ArgumentNullException.ThrowIfNull(formula);
        ArgumentNullException.ThrowIfNull(ingredient);
        var steps = formula.Steps;
        var boiled = Enumerable.Range(0, steps.Count).FirstOrDefault(at => Boils(steps[at], ingredient), -1);
        var mixed = MixingStep.Of(formula, steps.Count);
        return boiled >= 0
            && !Enumerable.Range(boiled + 1, Math.Max(0, mixed - boiled - 1)).Any(at => steps[at] is { IsCooking: false, Work.People: 0 });
    }

    private static bool Boils(MethodStep step, Ingredient ingredient) =>
        step.Work.Heats.Any(heat => heat.Kind == HeatKind.Boiled && heat.Ingredient.Id == ingredient.Id);
}
