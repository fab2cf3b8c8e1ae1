using ClassKit.BenchPlans.Changes;
using ClassKit.BenchPlans.Planning;
using ClassKit.BenchPlans.Trials;
using ClassKit.BenchSolver;
using ClassKit.Lessons.Packs;
using ClassKit.UseCases.Running;

namespace ClassKit.UseCases.Packs;

/// <summary>Plans a lesson for a class. Where not all of it fits the period, the least is moved out of it or cut, and that is said.</summary>
internal static class ClassPlanning
{
    /// <summary>The pack with its bench plan, with what was cut, and with the breads that are left to the instructor taken out of the teams' hands.</summary>
    public static PlannedPack Plan(ComputedPack pack, Run run)
    {
        run.Begin(RunStep.PlanningBenches);
        var solver = new CpSatSolver(run.Cancellation);
        var planner = new BenchPlanner(solver, PlannerSettings.Default);
        var bench = BenchClasses.Of(pack.Lesson, pack.Class);
        var planning = planner.Plan(bench);
        if (planning.Plan is not null || PeriodCuts.Least(bench, solver, PlannerSettings.Default) is not { } change)
            return new(pack, planning);
        var changed = planner.Plan(change.Apply(bench));
        if (changed.Plan is not { } plan)
            return new(pack, planning);
        return new(pack.LeftToInstructor([.. plan.Class.Breads.Where(bread => bread.LeftToInstructor).Select(bread => bread.Id)]), changed)
        {
            Cut = new(change, bench) { Conflict = planning.Conflict, MissingMinutes = planning.MissingMinutes },
        };
    }
}
