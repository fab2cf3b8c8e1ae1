using ClassKit.BenchSums.Catalogue;

namespace ClassKit.UseCases.Reckoning;

/// <summary>What working out a bench sum takes.</summary>
/// <param name="Sum">Which sum.</param>
/// <param name="Typed">Pairs of an input's name and what was typed for it.</param>
public sealed record BenchSumRequest(BenchSum Sum, IReadOnlyList<KeyValuePair<string, string>> Typed);
