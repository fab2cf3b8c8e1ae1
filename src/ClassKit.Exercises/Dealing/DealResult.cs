namespace ClassKit.Exercises.Dealing;

/// <summary>What came of dealing a class.</summary>
/// <param name="Class">What was dealt; null if an exercise has no variant that keeps its rules.</param>
/// <param name="Problems">Why there is none, an entry an exercise.</param>
/// <param name="Shared">Exercises with too few variants for all, of a deal that worked.</param>
public sealed record DealResult(DealtClass? Class, IReadOnlyList<DealProblem> Problems, IReadOnlyList<SharedVariants> Shared);
