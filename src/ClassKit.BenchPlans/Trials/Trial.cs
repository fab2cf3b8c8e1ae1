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
        for (var shifts = 1; shifts <= bench.Teams; shifts++)
        {
            // What the rule of thumb finds is a plan: no solver need be asked whether there is one.
            Plan = GreedyPlanner.Plan(bench, shifts);
            if (Plan is not null)
                return;
            var answer = Ask(shifts);
            (Plan, IsUnavailable) = (answer.Plan, answer.Verdict == SolverVerdict.Unavailable);
            if (Plan is not null || IsUnavailable)
                return;
            // With as many shifts as teams every plan there is can be had: where there is none, fewer need not be tried.
            IsImpossible =
                answer.Verdict == SolverVerdict.Impossible
                && (shifts == bench.Teams || shifts == 1 && Ask(bench.Teams).Verdict == SolverVerdict.Impossible);
            if (IsImpossible)
                return;
        }

        SolverAnswer Ask(int shifts) => solver.Solve(new(bench, PlanGoal.Any, shifts, settings.TrialEffort));
    }

    /// <summary>A plan in as few shifts as possible; null if none was found.</summary>
    public BenchPlan? Plan { get; }

    /// <summary>True if it is proven that there is none.</summary>
    public bool IsImpossible { get; }

    /// <summary>True if there is no solver to try with.</summary>
    public bool IsUnavailable { get; }
}
