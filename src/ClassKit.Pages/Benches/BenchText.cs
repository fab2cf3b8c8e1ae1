using ClassKit.Baking.Quantities;
using ClassKit.BenchPlans.Classes;
using ClassKit.BenchPlans.Plans;
using ClassKit.Lessons.Classes;
using ClassKit.Lessons.Cooking;
using ClassKit.Pages.Numbers;
using ClassKit.Wording.Counts;

namespace ClassKit.Pages.Benches;

/// <summary>Bench plans in words.</summary>
internal static class BenchText
{
    /// <summary>
    /// More minutes than these at the beginning look like a mistake where nothing is said of them. Common practice, no source.
    /// </summary>
    private const int LongestUnsaid = 15;

    /// <summary>The teams' shifts, and the instructor where a bread is left to them.</summary>
    public static IReadOnlyList<Shift> AllShifts(BenchPlan plan) =>
        [
            .. plan.Shifts,
            .. plan.Class.Breads.Any(bread => bread.LeftToInstructor) ? [new Shift([Maker.Instructor])] : Array.Empty<Shift>(),
        ];

    /// <summary>"All teams", "Shift 2: teams 4, 5 and 6", "Instructor".</summary>
    public static string Of(Shift shift, BenchPlan plan)
    {
        if (shift.IsInstructor)
            return "Instructor";
        if (plan.Shifts.Count == 1)
            return shift.Makers.Count == 1 ? "The team" : "All teams";
        return $"Shift {plan.Shifts.ToList().IndexOf(shift) + 1}: {Teams(shift.Makers, plan.Class)}";
    }

    /// <summary>A bread as some teams make it: those who do are named where not every team does.</summary>
    public static string Made(BenchBread bread, Shift making, BenchClass bench) =>
        bread.Teams is null || making.IsInstructor ? bread.Name : $"{bread.Name}, {Teams(making.Makers, bench)}";

    /// <summary>"team 1", "teams 1, 2 and 3".</summary>
    public static string Teams(IReadOnlyList<Maker> makers, BenchClass bench) =>
        makers[0].IsInstructor
            ? "instructor"
            : Counted.Noun(makers.Count, "team") + " " + Phrases.List([.. makers.Select(maker => bench.TeamName(maker.Team))]);

    /// <summary>How good the plan is, for people who will not look up what a bound is.</summary>
    public static string Quality(PlanQuality quality, BenchPlan plan)
    {
        var (shifts, loads) = (plan.Shifts.Count, plan.Class.Loads.Count(load => !plan.Class.Breads[load.Bread].IsForShow));
        var cost = quality.Cost;
        var stands =
            cost.StandingMinutes == 0
                ? "Every bread is ready just as the tasting begins"
                : $"A finished bread stands for about {NumberText.WithUnit(NumberText.Fixed(Math.Ceiling((double)cost.StandingMinutes / loads), 0), "min")} before the tasting, the mean of all teams' breads";
        var waits =
            cost.WaitingMinutes == 0
                ? "no dough waits between its steps"
                : $"doughs and watchers wait for {NumberText.WithUnit($"{cost.WaitingMinutes}", "min")} in all";
        var proof =
            quality.IsProven
                ? $"No other plan {(shifts == 1 ? "with all teams at once" : $"in {Phrases.Count(shifts, "shift")}")} is better."
            : quality.Bound > 0
                ? $"With a longer search another plan might be better, by {NumberText.AtMost(Math.Ceiling(PerHundred.Of(quality.Gap)), 0)} % at most."
            : "";
        return $"{stands}; {waits}. {proof}".TrimEnd();
    }

    /// <summary>
    /// The minutes between when work may begin and the first step of any team or of the instructor; null where they are too few to ask
    /// about.
    /// </summary>
    public static int? Idle(BenchPlan plan) =>
        plan.Steps.Min(step => step.Start) - plan.Class.Time.WorkFrom is > LongestUnsaid and var minutes ? minutes : null;

    /// <summary>What a step occupies besides hands, and how hot that is: "1 fryer at 325 °F", "1 burner, pan at 245 °C".</summary>
    public static string Takes(BenchStep step, UnitSystem units)
    {
        var taken = string.Join(", ", step.Uses.Select(use => use.ToString()));
        if (step is not { Way: { } way, CookedAt: { } heat })
            return taken;
        var place = CookingPlace.Of(way);
        var isNamed = step.Uses is [.., var last] && (last.Kind.PlaceOf ?? last.Kind).One == place.Name;
        return $"{taken}{(isNamed ? "" : $", {place.Name}")} at {KitchenText.Oven(heat, units)}";
    }

    /// <summary>What a step warms, and how warm: "whole milk and unsalted butter to 33 °C (91 °F)".</summary>
    public static IEnumerable<string> Warms(BenchStep step, UnitSystem units) =>
        step
            .Heats.Where(heat => heat.StandsMinutes == 0)
            .OrderBy(heat => heat.InWarmWater)
            .GroupBy(heat =>
                $"{(heat.IsDrawn ? " drawn at" : heat.InWarmWater ? " in warm water to" : " to")} {KitchenText.Temperature(heat.To, units)}"
            )
            .Select(alike => Phrases.List([.. alike.Select(heat => heat.What)]) + alike.Key);
}
