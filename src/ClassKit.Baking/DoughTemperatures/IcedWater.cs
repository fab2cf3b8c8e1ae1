using ClassKit.Baking.Explanations;
using ClassKit.Baking.Quantities;

namespace ClassKit.Baking.DoughTemperatures;

/// <summary>Water and ice for a dough.</summary>
/// <param name="Ice">At 0 °C, crushed so that it melts while mixing.</param>
/// <param name="Liquid">From the tap.</param>
/// <param name="Explanation">How it was computed.</param>
public sealed record IcedWater(Mass Ice, Mass Liquid, Explanation Explanation) : IExplained;
