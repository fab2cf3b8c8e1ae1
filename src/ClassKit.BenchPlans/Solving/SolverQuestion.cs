using ClassKit.BenchPlans.Classes;
using ClassKit.BenchPlans.Plans;

namespace ClassKit.BenchPlans.Solving;

/// <summary>What a solver is asked.</summary>
/// <param name="Class">The class.</param>
/// <param name="Goal">What to look for.</param>
/// <param name="Shifts">In how many shifts the teams work; from 1 to the number of teams.</param>
/// <param name="Effort">How long to look, in the solver's own count of work, which no clock or machine changes; above 0. About a second
/// each.</param>
public sealed record SolverQuestion(BenchClass Class, PlanGoal Goal, int Shifts, double Effort)
{
    /// <summary>Rules that the plan need not keep; none, unless conflicts are being traced.</summary>
    public IReadOnlySet<PlanRule> Without { get; init; } = new HashSet<PlanRule>();

    /// <summary>A plan to begin from; null if there is none.</summary>
    public BenchPlan? Hint { get; init; }

    /// <summary>What makes one plan better than another, where the best is looked for.</summary>
    public PlanWeights Weights { get; init; } = PlanWeights.Default;
}
