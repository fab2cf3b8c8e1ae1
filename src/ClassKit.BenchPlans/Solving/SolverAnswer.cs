using ClassKit.BenchPlans.Plans;

namespace ClassKit.BenchPlans.Solving;

/// <summary>What a solver found.</summary>
/// <param name="Verdict">How the search ended.</param>
/// <param name="Plan">The plan; null unless one was found.</param>
/// <param name="Bound">No plan has a lower weighed cost than this; of a search for the best only.</param>
public sealed record SolverAnswer(SolverVerdict Verdict, BenchPlan? Plan, double Bound);
