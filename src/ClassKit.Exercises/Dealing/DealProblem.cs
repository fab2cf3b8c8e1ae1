using ClassKit.Exercises.Authoring;
using ClassKit.Exercises.Guarantees;

namespace ClassKit.Exercises.Dealing;

/// <summary>Why an exercise cannot be dealt.</summary>
/// <param name="Exercise">The exercise.</param>
/// <param name="Attempts">How many draws were tried.</param>
/// <param name="Because">Why most of them were thrown away; null if every variant was dealt before.</param>
public sealed record DealProblem(Exercise Exercise, int Attempts, Breach? Because);
