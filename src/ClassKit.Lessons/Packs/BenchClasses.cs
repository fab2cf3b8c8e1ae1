using ClassKit.Baking;
using ClassKit.BenchPlans;

namespace ClassKit.Lessons;

/// <summary>What a lesson asks of a class at the benches.</summary>
public static class BenchClasses
{
    /// <summary>The class that a bench plan is made for.</summary>
    /// <param name="lesson">What is baked and shown.</param>
    /// <param name="profile">Teams and kitchen. Everybody helps somewhere: a team counts on as many people as the smallest has.</param>
    public static BenchClass Of(Lesson lesson, ClassProfile profile)
    {
        ArgumentNullException.ThrowIfNull(lesson);
        ArgumentNullException.ThrowIfNull(profile);
        var aside = lesson.SetAside;
        return new(
            new(profile.PeriodMinutes, aside.SetupMinutes, aside.TastingMinutes, aside.CleanupMinutes),
            profile.Teams,
            profile.Students / profile.Teams,
            profile.Equipment,
            new(profile.Ovens, profile.OvenPlaces, profile.OvenHeatUpMinutes, OvenBank.UsualWarming, OvenBank.UsualCooling),
            [.. lesson.Formulas.Select(Bread)],
            [.. lesson.Demonstrations.Select(shown => new Demonstration(shown.Name, shown.Minutes, Before(lesson, shown)))]);
    }

    private static StepOfBread? Before(Lesson lesson, LessonDemonstration shown)
    {
        if (shown.FormulaId.Length == 0)
            return null;
        var bread = lesson.Formulas.ToList().FindIndex(formula => formula.Formula.Id == shown.FormulaId);
        return new(bread, lesson.Formulas[bread].Steps.ToList().FindIndex(step => step.Name == shown.StepName));
    }

    private static BenchBread Bread(LessonFormula formula)
    {
        var hasYeast = formula.Formula.Lines.Any(line => line.Ingredient.Role == IngredientRole.Yeast);
        return new(formula.Formula.Id, formula.Formula.Title, [.. formula.Steps.Select((step, at) => Step(step, Heat(formula, at), formula, hasYeast))]) { KeepsMinutes = formula.BestWithinMinutes };
    }

    /// <summary>What the oven is set to that a step needs: in it, ready before it, or kept between two bakes for the second.</summary>
    private static Temperature? Heat(LessonFormula formula, int at)
    {
        var steps = formula.Steps;
        var next = Enumerable.Range(at, steps.Count - at).Where(later => steps[later].InOven).Select(later => steps[later].Temperature).FirstOrDefault();
        return steps.Take(at + 1).Any(step => step.InOven || step.Work.OvenReady) ? next : null;
    }

    /// <summary>Places in the oven and a door that stays shut are of the whole bake: one step that names them is enough.</summary>
    private static BenchStep Step(MethodStep step, Temperature? heat, LessonFormula formula, bool hasYeast) =>
        new(step.Name, step.MinMinutes, step.MaxMinutes)
        {
            People = step.Work.People,
            Uses = step.Work.Uses,
            Oven = heat is { } dial ? new(dial, formula.Steps.Max(any => any.Work.OvenPlaces), formula.Steps.Any(any => any.Work.DoorShut)) : null,
            Wait = step.Work.Wait,
            MayBeDoneAhead = step.Work.KeepsOvernight,
            RiseAt = hasYeast && step.Work.People == 0 && !step.InOven ? step.Temperature : null,
        };
}
