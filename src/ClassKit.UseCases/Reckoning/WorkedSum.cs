using ClassKit.BenchSums.Catalogue;
using ClassKit.BenchSums.Inputs;
using ClassKit.BenchSums.Results;

namespace ClassKit.UseCases.Reckoning;

/// <summary>A bench sum worked out.</summary>
/// <param name="Sum">Which.</param>
/// <param name="Taken">What each input was taken as, typed or usual.</param>
/// <param name="Result">What it comes to.</param>
public sealed record WorkedSum(BenchSum Sum, IReadOnlyList<KeyValuePair<SumInput, string>> Taken, SumResult Result);
