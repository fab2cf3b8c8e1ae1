using ClassKit.BenchPlans.Classes;
using ClassKit.BenchPlans.Solving;
using ClassKit.BenchPlans.Trials;

namespace ClassKit.BenchPlans.Conflicts;

/// <summary>Finds a smallest group of rules that leaves no plan, by doing without one rule after the other.</summary>
internal sealed class ConflictTracing(IPlanSolver solver, PlannerSettings settings)
{
    /// <summary>The conflict of a class that has no plan.</summary>
    public PlanConflict Trace(BenchClass bench)
    {
        var kept = PlanRule.Of(bench).ToList();
        var dropped = new HashSet<PlanRule>();
        var isSmallest = true;
        foreach (var rule in PlanRule.Of(bench))
        {
            dropped.Add(rule);
            // Still no plan without it: it has no part in the conflict. Where that is not decided, it is named to be safe.
            var verdict = solver.Solve(new(bench, PlanGoal.Any, bench.Teams, settings.TrialEffort) { Without = dropped }).Verdict;
            if (verdict == SolverVerdict.Impossible)
            {
                kept.Remove(rule);
                continue;
            }
            dropped.Remove(rule);
            isSmallest &= verdict != SolverVerdict.Undecided;
        }
        return new(kept, isSmallest);
    }
}
