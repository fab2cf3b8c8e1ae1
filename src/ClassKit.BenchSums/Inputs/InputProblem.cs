using ClassKit.Baking.Explanations;

namespace ClassKit.BenchSums.Inputs;

/// <summary>Why something typed for a sum cannot be used.</summary>
/// <param name="Name">The input's name, as typed or as asked for.</param>
/// <param name="Why">What was found and what to type.</param>
public sealed record InputProblem(string Name, Impossibility Why);
