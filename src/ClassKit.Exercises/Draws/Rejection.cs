using ClassKit.Exercises.Guarantees;

namespace ClassKit.Exercises.Draws;

/// <summary>Draws thrown away for one reason.</summary>
/// <param name="First">How the first of them broke a rule.</param>
/// <param name="Givens">The givens of that draw, by id.</param>
/// <param name="Count">How many there were.</param>
public sealed record Rejection(Breach First, IReadOnlyDictionary<string, decimal> Givens, int Count);
