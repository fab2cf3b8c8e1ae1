using ClassKit.Baking.Quantities;

namespace ClassKit.BenchPlans.Classes;

/// <summary>An ingredient that a step needs warmer than it is kept.</summary>
/// <param name="What">The ingredient: <c>whole milk</c>.</param>
/// <param name="To">How warm it gets.</param>
/// <param name="StandsMinutes">How long before the step it is taken out of the refrigerator; 0 where the step itself warms it.</param>
public sealed record StepHeat(string What, Temperature To, int StandsMinutes)
{
    /// <summary>True where its bowl stands in warm water, so that it takes no burner.</summary>
    public bool InWarmWater { get; init; }

    /// <summary>True for water, which comes from the tap as warm as it is wanted.</summary>
    public bool IsDrawn { get; init; }
}
