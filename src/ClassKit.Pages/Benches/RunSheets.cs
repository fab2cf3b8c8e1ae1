using ClassKit.BenchPlans.Classes;
using ClassKit.BenchPlans.Ovens;
using ClassKit.BenchPlans.Plans;
using ClassKit.BenchPlans.Tempering;
using ClassKit.Lessons.Classes;
using ClassKit.Pages.Numbers;

namespace ClassKit.Pages.Benches;

/// <summary>A bench plan as lists of what to do when.</summary>
internal static class RunSheets
{
    /// <summary>What one team does and watches, in order of time.</summary>
    public static IReadOnlyList<RunEntry> Team(BenchPlan plan, Maker team, ClassProfile profile) =>
        Sorted([.. Steps(plan, team, profile.Units), .. plan.Demonstrations.Select(shown => new RunEntry(shown.Start, $"Watch: {shown.Demonstration.Name}", "", shown.End, "everybody", true)), .. Ends(plan)]);

    /// <summary>What the instructor shows, sets and makes, in order of time.</summary>
    public static IReadOnlyList<RunEntry> Instructor(BenchPlan plan, ClassProfile profile) =>
        Sorted(
        [
            .. plan.Demonstrations.Select(shown => new RunEntry(shown.Start, $"Show: {shown.Demonstration.Name}", "", shown.End, string.Join(", ", ["to all teams", .. shown.Demonstration.Uses.Select(use => use.ToString())]), true)),
            .. plan.Shifts.Select((shift, at) => Begin(plan, shift, at)),
            .. OvenCourse.Of(plan).SelectMany(course => Oven(plan, course, profile.Units)),
            .. OutOfTheCold(plan, profile.Start),
            .. Steps(plan, Maker.Instructor, profile.Units),
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
        notes.AddRange(BenchText.Warms(step, units));
        return string.Join(", ", notes);
    }

    /// <summary>What stands before it is used is taken out in time, for whoever is first to use it; some of it before the class begins.</summary>
    private static IEnumerable<RunEntry> OutOfTheCold(BenchPlan plan, ClassStart? start) =>
        from taken in TakenOut.Of(plan)
        let bread = plan.Class.Breads[taken.For.Bread]
        select new RunEntry(taken.Minute, $"Take {taken.Heat.What} out of the refrigerator", bread.Name, null, $"in pieces, for {bread.Steps[taken.For.Step].Name} at {KitchenText.Clock(taken.Start, start)}: {BenchText.Teams(taken.Makers)}", true);

    private static RunEntry Begin(BenchPlan plan, Shift shift, int at)
    {
        var first = plan.Steps.Where(step => step.Load.Maker == shift.Makers[0]).MinBy(step => step.Start)!;
        var who = plan.Shifts.Count == 1 ? "All teams begin" : $"Shift {at + 1} begins";
        return new(first.Start, who, plan.Class.Breads[first.Load.Bread].Name, null, BenchText.Teams(shift.Makers), true);
    }

    /// <summary>Setting an oven, each bake that goes in, and switching it off.</summary>
    private static IEnumerable<RunEntry> Oven(BenchPlan plan, OvenCourse course, UnitSystem units)
    {
        var before = (OvenSpan?)null;
        foreach (var span in course.Spans)
        {
            if (before?.Dial != span.Dial)
            {
                var heat = KitchenText.Oven(span.Dial, units);
                var goesOn = before is not null && span.Inside.Any(before.Inside.Contains);
                var next = course.Spans.First(later => later.From >= span.From && !later.IsEmpty);
                yield return new(span.From, goesOn ? $"Turn oven {course.Oven} to {heat}" : $"Set oven {course.Oven} to {heat}", Names(plan, next.Breads), null, before is null ? "from cold" : goesOn ? "with the bread in it" : "", true);
            }
            foreach (var bread in span.Breads)
            {
                var came = span.MakersOf(bread).Where(maker => before?.Inside.Contains(new(maker, bread)) != true).ToList();
                if (came.Count > 0)
                    yield return new(span.From, $"Into oven {course.Oven}", Names(plan, [bread]), course.Spans.Last(later => later.Inside.Contains(new(came[0], bread))).To, BenchText.Teams(came), false);
            }
            before = span;
        }
        yield return new(course.Spans[^1].To, $"Switch oven {course.Oven} off", "", null, "", true);
    }

    private static string Names(BenchPlan plan, IReadOnlyList<int> breads) => string.Join(", ", breads.Select(bread => plan.Class.Breads[bread].Name));

    private static IEnumerable<RunEntry> Ends(BenchPlan plan)
    {
        var time = plan.Class.Time;
        yield return new(time.ReadyBy, "Tasting begins", "", time.TastingMinutes > 0 ? time.ReadyBy + time.TastingMinutes : null, "everything is ready", true);
        if (time.CleanupMinutes > 0)
            yield return new(time.ReadyBy + time.TastingMinutes, "Clean up", "", time.PeriodMinutes, "", true);
    }
}
