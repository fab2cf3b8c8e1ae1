using ClassKit.Exercises;

namespace ClassKit.UseCases;

/// <summary>What is wanted of a deal.</summary>
/// <param name="Set">Which exercises.</param>
/// <param name="IsSpread">True for different sets of equal weight, false for the same set for everyone.</param>
/// <param name="Seed">Decides every draw.</param>
public sealed record DealWish(SetWish Set, bool IsSpread, ulong Seed);
