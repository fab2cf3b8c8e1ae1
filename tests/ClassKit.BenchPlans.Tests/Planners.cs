using ClassKit.BenchPlans.Planning;
using ClassKit.BenchPlans.Solving;
using ClassKit.BenchPlans.Trials;
using ClassKit.BenchSolver;

namespace ClassKit.BenchPlans.Tests;

internal static class Planners
{
    public static BenchPlanner Usual { get; } = new(new CpSatSolver(), PlannerSettings.Default);

    /// <summary>For many small classes.</summary>
    public static BenchPlanner Brief { get; } = new(new CpSatSolver(), PlannerSettings.Default with { Effort = 0.1, TrialEffort = 0.1 });

    /// <summary>Where the solver cannot be loaded.</summary>
    public static BenchPlanner ByRule { get; } = new(new Missing(), PlannerSettings.Default);

    private sealed class Missing : IPlanSolver
    {
        public SolverAnswer Solve(SolverQuestion question) => new(SolverVerdict.Unavailable, null, 0);
    }
}
