using ClassKit.Baking.Quantities;

namespace ClassKit.Baking.Ingredients;

/// <summary>How an ingredient makes gas without yeast.</summary>
/// <param name="Kind">What makes it.</param>
public sealed record RaisingPower(RaisingKind Kind)
{
    /// <summary>Of a powder, grams of carbon dioxide from a gram, 0 to 1; null to take what is usual.</summary>
    public Band<double>? GasShare { get; init; }

    /// <summary>Of a powder, the share of that gas that comes before the oven, 0 to 1; null to take what is usual.</summary>
    public Band<double>? BenchShare { get; init; }
}
