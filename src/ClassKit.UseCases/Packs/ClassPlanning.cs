using ClassKit.BenchPlans.Changes;
using ClassKit.BenchPlans.Classes;
using ClassKit.BenchPlans.Planning;
using ClassKit.BenchPlans.Plans;
using ClassKit.BenchPlans.Trials;
using ClassKit.BenchSolver;
using ClassKit.Lessons.Packs;
using ClassKit.UseCases.Running;

namespace ClassKit.UseCases.Packs;

/// <summary>
/// Plans a lesson for a class. Where not all of it fits the period, the least is moved out of it or cut, and that is said.
/// </summary>
internal static class ClassPlanning
{
    /// <summary>A plan of a class, the best where a series is to be compared in it; null if none was found.</summary>
    public static BenchPlan? Fit(BenchClass bench, Run run)
    {
        run.Begin(RunStep.PlanningBenches);
        var planner = new BenchPlanner(new CpSatSolver(run.Cancellation), PlannerSettings.Default);
        var any = planner.Any(bench);
        return any is null || BenchSeries.Of(bench).Count == 0 ? any : planner.Plan(bench).Plan;
    }

    /// <summary>
    /// Why a class that has no plan has none, with the least that makes it fit where something can be moved out of it or cut; no other
    /// change is looked for then.
    /// </summary>
    public static (BenchPlanning Planning, PlanChange? Cut) WhyNot(BenchClass bench, Run run)
    {
        run.Begin(RunStep.PlanningBenches);
        var solver = new CpSatSolver(run.Cancellation);
        var cut = PeriodCuts.Least(bench, solver, PlannerSettings.Default);
        return (new BenchPlanner(solver, PlannerSettings.Default).WhyNot(bench, offersChanges: cut is null), cut);
    }

    /// <summary>
    /// The pack with its bench plan, with what was cut, and with the breads that are left to the instructor taken out of the teams' hands.
    /// </summary>
    public static PlannedPack Plan(ComputedPack pack, Run run)
    {
        run.Begin(RunStep.PlanningBenches);
        var solver = new CpSatSolver(run.Cancellation);
        var planner = new BenchPlanner(solver, PlannerSettings.Default);
        var bench = BenchClasses.Of(pack.Lesson, pack.Class);
        var planning = planner.Plan(bench, offersChanges: false);
        if (planning.Plan is not null)
            return new(pack, planning);
        if (
            PeriodCuts.Least(bench, solver, PlannerSettings.Default) is not { } change
            || planner.Plan(change.Apply(bench)) is not { Plan: { } plan } changed
        )
            return new(pack, planner.Offering(bench, planning));
        return new(pack.LeftToInstructor([.. plan.Class.Breads.Where(bread => bread.LeftToInstructor).Select(bread => bread.Id)]), changed)
        {
            Cut = new(change, bench) { Conflict = planning.Conflict, MissingMinutes = planning.MissingMinutes },
        };
    }
}
