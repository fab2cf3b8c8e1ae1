using ClassKit.BenchPlans.Solving;

namespace ClassKit.Pages.Tests.Samples;

/// <summary>A machine without a solver: plans come from the rule of thumb, which needs no native code.</summary>
internal sealed class NoSolver : IPlanSolver
{
    public SolverAnswer Solve(SolverQuestion question) => new(SolverVerdict.Unavailable, null, 0);
}
