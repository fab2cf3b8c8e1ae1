using ClassKit.BenchPlans.Classes;
using ClassKit.BenchPlans.Plans;
using ClassKit.BenchPlans.RuleOfThumb;
using ClassKit.BenchPlans.Solving;

namespace ClassKit.BenchPlans.Trials;

/// <summary>Whether a class fits at all: tried with one shift, then two, up to each team by itself.</summary>
internal sealed class Trial
{
    public Trial(IPlanSolver solver, PlannerSettings settings, BenchClass bench)
    {
        for (var shifts = 1; shifts <= bench.Teams && Plan is null; shifts++)
        {
            // What the rule of thumb finds is a plan: no solver need be asked whether there is one.
            if (GreedyPlanner.Plan(bench, shifts) is { } found)
            {
                Plan = found;
                return;
            }
            var answer = solver.Solve(new(bench, PlanGoal.Any, shifts, settings.TrialEffort));
            if (answer.Verdict == SolverVerdict.Unavailable)
            {
                IsUnavailable = true;
                return;
            }
            Plan = answer.Plan;
            // With as many shifts as teams every plan there is can be had.
            IsImpossible = answer.Verdict == SolverVerdict.Impossible && shifts == bench.Teams;
        }
    }

    /// <summary>A plan in as few shifts as possible; null if none was found.</summary>
    public BenchPlan? Plan { get; }

    /// <summary>True if it is proven that there is none.</summary>
    public bool IsImpossible { get; }

    /// <summary>True if there is no solver to try with.</summary>
    public bool IsUnavailable { get; }
}
