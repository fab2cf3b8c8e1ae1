using ClassKit.BenchPlans.Solving;

namespace ClassKit.BenchPlans.Conflicts;

/// <summary>Rules that cannot all be kept: that is proven.</summary>
/// <param name="Rules">Which.</param>
/// <param name="IsSmallest">True if a plan was found without each of them; false if for some it was not decided whether they have a part in
/// the conflict.</param>
public sealed record PlanConflict(IReadOnlyList<PlanRule> Rules, bool IsSmallest);
