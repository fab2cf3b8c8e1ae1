namespace ClassKit.BenchPlans;

/// <summary>Rules that cannot all be kept. Without any one of them there would be a plan, unless it is said that this is not proven.</summary>
/// <param name="Rules">Which.</param>
/// <param name="Sentences">What each of them asks, with its numbers, in an instructor's words; in the order of <paramref name="Rules"/>.</param>
public sealed record PlanConflict(IReadOnlyList<PlanRule> Rules, IReadOnlyList<string> Sentences);
