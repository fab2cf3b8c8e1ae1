namespace ClassKit.BenchSums.Results;

/// <summary>One answer of a sum.</summary>
/// <param name="Label">What it is.</param>
/// <param name="Quantity">How much.</param>
public sealed record SumLine(string Label, SumQuantity Quantity);
