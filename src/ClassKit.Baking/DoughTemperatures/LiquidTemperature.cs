using ClassKit.Baking.Explanations;
using ClassKit.Baking.Quantities;

namespace ClassKit.Baking.DoughTemperatures;

/// <summary>How warm the water, or the milk in its place, has to be.</summary>
/// <param name="Temperature">The answer of the equation; below 0 °C means that some of the water goes in as ice.</param>
/// <param name="Advice">What to mind.</param>
/// <param name="Explanation">How it was computed.</param>
public sealed record LiquidTemperature(Temperature Temperature, IReadOnlyList<Advice> Advice, Explanation Explanation) : IExplained
{
    /// <summary>True if no tap runs that cold: see <see cref="Ice"/>.</summary>
    public bool NeedsIce => Temperature.Celsius < 0;
}
