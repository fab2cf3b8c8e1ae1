namespace ClassKit.BenchPlans.Solving;

/// <summary>What finds plans. Whatever stands behind it, the same question gets the same answer.</summary>
public interface IPlanSolver
{
    /// <summary>Looks for a plan.</summary>
    SolverAnswer Solve(SolverQuestion question);
}
