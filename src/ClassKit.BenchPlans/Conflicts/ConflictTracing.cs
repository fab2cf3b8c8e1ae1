namespace ClassKit.BenchPlans;

/// <summary>Finds a smallest group of rules that leaves no plan, by doing without one rule after the other.</summary>
internal sealed class ConflictTracing(IPlanSolver solver, PlannerSettings settings)
{
    /// <summary>The conflict of a class that has no plan.</summary>
    public PlanConflict Trace(BenchClass bench)
    {
        var kept = PlanRule.Of(bench).ToList();
        var dropped = new HashSet<PlanRule>();
        foreach (var rule in PlanRule.Of(bench))
        {
            dropped.Add(rule);
            // Still no plan without it: it has no part in the conflict. Where that is not decided, it is named to be safe.
            if (solver.Solve(new(bench, PlanGoal.Any, bench.Teams, settings.TrialEffort) { Without = dropped }).Verdict == SolverVerdict.Impossible)
                kept.Remove(rule);
            else
                dropped.Remove(rule);
        }
        return new(kept, [.. kept.Select(rule => RuleWords.Of(rule, bench))]);
    }
}
