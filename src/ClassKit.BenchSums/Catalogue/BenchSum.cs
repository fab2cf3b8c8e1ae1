using ClassKit.Baking.Explanations;
using ClassKit.BenchSums.Inputs;
using ClassKit.BenchSums.Results;

namespace ClassKit.BenchSums.Catalogue;

/// <summary>A computation of the trade that is wanted at the bench: what it asks for and how it is worked out.</summary>
/// <param name="Id">How it is called when typed: lower-case letters and dashes.</param>
/// <param name="Title">What it answers.</param>
/// <param name="Topic">What it is about.</param>
/// <param name="Inputs">What it asks for.</param>
/// <param name="Work">The sum, over values that were read; a reason where there is no sensible result.</param>
public sealed record BenchSum(
    string Id,
    string Title,
    SumTopic Topic,
    IReadOnlyList<SumInput> Inputs,
    Func<SumValues, Computed<SumResult>> Work
);
