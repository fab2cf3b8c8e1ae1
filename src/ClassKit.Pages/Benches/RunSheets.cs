using ClassKit.Baking;
using ClassKit.BenchPlans;
using ClassKit.Lessons;
using ClassKit.Pages.Numbers;

namespace ClassKit.Pages.Benches;

/// <summary>A bench plan as lists of what to do when.</summary>
internal static class RunSheets
{
    /// <summary>What one team does and watches, in order of time.</summary>
    public static IReadOnlyList<RunEntry> Team(BenchPlan plan, Maker team, UnitSystem units) =>
        Sorted([.. Steps(plan, team, units), .. plan.Demonstrations.Select(shown => new RunEntry(shown.Start, $"Watch: {shown.Demonstration.Name}", "", shown.End, "everybody", true)), .. Ends(plan)]);

    /// <summary>What the instructor shows, sets and makes, in order of time.</summary>
    public static IReadOnlyList<RunEntry> Instructor(BenchPlan plan, UnitSystem units) =>
        Sorted(
        [
            .. plan.Demonstrations.Select(shown => new RunEntry(shown.Start, $"Show: {shown.Demonstration.Name}", "", shown.End, "to all teams", true)),
            .. plan.Shifts.Select((shift, at) => Begin(plan, shift, at)),
            .. Enumerable.Range(1, plan.Class.Ovens.Count).SelectMany(oven => Oven(plan, oven, units)),
            .. Steps(plan, Maker.Instructor, units),
            .. Ends(plan),
        ]);

    private static IReadOnlyList<RunEntry> Sorted(IReadOnlyList<RunEntry> entries) =>
        [.. entries.OrderBy(entry => entry.Minute).ThenByDescending(entry => entry.IsWork).ThenBy(entry => entry.Bread, StringComparer.Ordinal)];

    private static IEnumerable<RunEntry> Steps(BenchPlan plan, Maker maker, UnitSystem units)
    {
        foreach (var planned in plan.Steps.Where(step => step.Load.Maker == maker))
        {
            var bread = plan.Class.Breads[planned.Load.Bread];
            var step = bread.Steps[planned.Step];
            yield return new(planned.Start, $"{bread.StepsDoneBefore + planned.Step + 1}. {step.Name}", bread.Name, planned.End, Note(step, planned, units), step.IsHandsOn);
        }
    }

    private static string Note(BenchStep step, PlannedStep planned, UnitSystem units)
    {
        List<string> notes = [];
        if (step.People > 1)
            notes.Add($"{step.People} people");
        if (planned.Oven is { } oven)
            notes.Add($"oven {oven} at {KitchenText.Oven(step.Oven!.Temperature, units)}");
        if (BenchText.Takes(step) is { Length: > 0 } takes)
            notes.Add(takes);
        return string.Join(", ", notes);
    }

    private static RunEntry Begin(BenchPlan plan, Shift shift, int at)
    {
        var first = plan.Steps.Where(step => step.Load.Maker == shift.Makers[0]).MinBy(step => step.Start)!;
        var who = plan.Shifts.Count == 1 ? "All teams begin" : $"Shift {at + 1} begins";
        return new(first.Start, who, plan.Class.Breads[first.Load.Bread].Name, null, BenchText.Teams(shift.Makers), true);
    }

    /// <summary>Setting an oven, and each bake that goes in and comes out.</summary>
    private static IEnumerable<RunEntry> Oven(BenchPlan plan, int oven, UnitSystem units)
    {
        var dial = (Temperature?)null;
        var free = 0;
        foreach (var bake in OvenUses.Of(plan, oven))
        {
            var name = plan.Class.Breads[bake.Bread].Name;
            if (dial != bake.From)
            {
                // From cold it is set in time and not sooner; between two bakes as soon as the first is out.
                var when = dial is null ? Math.Max(0, bake.Start - plan.Class.Ovens.HeatUpMinutes) : free;
                yield return new(when, $"Set oven {oven} to {KitchenText.Oven(bake.From, units)}", name, null, dial is null ? "from cold" : "", true);
            }
            yield return new(bake.Start, $"Into oven {oven}", name, bake.End, BenchText.Teams(bake.Makers), false);
            dial = bake.From;
            foreach (var stage in bake.Stages)
            {
                var heat = plan.Class.Breads[bake.Bread].Steps[stage.Step].Oven!.Temperature;
                if (heat != dial)
                    yield return new(stage.Start, $"Turn oven {oven} to {KitchenText.Oven(heat, units)}", name, null, "door stays shut", true);
                dial = heat;
            }
            free = Math.Max(free, bake.End);
        }
    }

    private static IEnumerable<RunEntry> Ends(BenchPlan plan)
    {
        var time = plan.Class.Time;
        yield return new(time.ReadyBy, "Tasting begins", "", time.TastingMinutes > 0 ? time.ReadyBy + time.TastingMinutes : null, "everything is ready", true);
        if (time.CleanupMinutes > 0)
            yield return new(time.ReadyBy + time.TastingMinutes, "Clean up", "", time.PeriodMinutes, "", true);
    }
}
