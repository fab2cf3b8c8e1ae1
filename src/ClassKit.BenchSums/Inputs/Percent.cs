using ClassKit.Baking.Quantities;

namespace ClassKit.BenchSums.Inputs;

/// <summary>A percentage as typed: 65 is 65 %.</summary>
/// <param name="Value">Per 100.</param>
public readonly record struct Percent(double Value)
{
    /// <summary>The same as a share: 65 % is 0.65.</summary>
    public double Share => PerHundred.Share(Value);
}
