namespace ClassKit.Exercises.Dealing;

/// <summary>What came of dealing a class.</summary>
/// <param name="Class">What was dealt; null if an exercise has no variant that keeps its rules.</param>
/// <param name="Problems">Why there is none, one sentence an exercise.</param>
/// <param name="Notes">What the instructor should know of a deal that worked.</param>
public sealed record DealResult(DealtClass? Class, IReadOnlyList<string> Problems, IReadOnlyList<string> Notes);
