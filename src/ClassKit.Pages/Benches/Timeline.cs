using ClassKit.BenchPlans;
using ClassKit.Lessons;
using ClassKit.Pages.Numbers;

namespace ClassKit.Pages.Benches;

/// <summary>A bench plan as rows of bars.</summary>
internal static class Timeline
{
    /// <summary>What is shown, what each shift does, what is in each oven.</summary>
    public static IReadOnlyList<TimelineRow> Rows(BenchPlan plan, UnitSystem units) => [.. Shown(plan), .. Work(plan), .. Ovens(plan, units)];

    private static IEnumerable<TimelineRow> Shown(BenchPlan plan)
    {
        if (plan.Demonstrations.Count > 0)
            yield return new("Instructor", "Demonstrations", [.. plan.Demonstrations.OrderBy(shown => shown.Start).Select((shown, at) => new TimelineBar(shown.Demonstration.Name, Wording.Letter(at).ToUpperInvariant(), shown.Start, shown.End, BarKind.Shown))]);
    }

    private static IEnumerable<TimelineRow> Work(BenchPlan plan)
    {
        foreach (var shift in BenchText.AllShifts(plan))
        {
            var heading = BenchText.Of(shift, plan);
            for (var at = 0; at < plan.Class.Breads.Count; at++)
            {
                var bread = plan.Class.Breads[at];
                if (bread.LeftToInstructor != shift.IsInstructor)
                    continue;
                yield return new(heading, bread.Name, [.. plan.StepsOf(new(shift.Makers[0], at)).Select(step => Bar(step, bread))]);
                heading = "";
            }
        }
    }

    private static TimelineBar Bar(PlannedStep planned, BenchBread bread)
    {
        var step = bread.Steps[planned.Step];
        return new(step.Name, $"{bread.StepsDoneBefore + planned.Step + 1}", planned.Start, planned.End, step.IsHandsOn ? BarKind.HandsOn : step.Oven is not null ? BarKind.Oven : BarKind.Alone);
    }

    private static IEnumerable<TimelineRow> Ovens(BenchPlan plan, UnitSystem units)
    {
        var heading = "Ovens";
        foreach (var oven in plan.Steps.Where(step => step.Oven is not null).GroupBy(step => step.Oven!.Value).OrderBy(steps => steps.Key))
        {
            var bakes = OvenUses.Of(plan, oven.Key);
            yield return new(heading, $"Oven {oven.Key}", [.. bakes.Select(bake => new TimelineBar($"{KitchenText.Oven(bake.From, units)} {plan.Class.Breads[bake.Bread].Name}", "", bake.Start, bake.End, BarKind.Oven))]);
            heading = "";
        }
    }
}
